using GrindShop.Testing;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace GrindShop.Web.Tests;

/// <summary>The whole application on a copy of the scenario, one for each test class.</summary>
public sealed class ShopApp : WebApplicationFactory<Program>, IAsyncLifetime
{
    private readonly TestFolder _mail = TestFolder.Make();
    private TestDatabase _database = null!;

    /// <summary>Where the shop's mails land.</summary>
    public string MailFolder => _mail.Path;

    public string ConnectionString => _database.ConnectionString;

    public async Task InitializeAsync() => _database = await ShopTemplates.Scenario.CopyAsync();

    /// <summary>Listens on a free port of this machine, for browsers; answers with its address.</summary>
    public Uri Listen()
    {
        UseKestrel(0);
        StartServer();
        var addresses = Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses;
        return new Uri(addresses.First().Replace("[::]", "127.0.0.1", StringComparison.Ordinal));
    }

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeAsync();
        await _database.DisposeAsync();
        _mail.Dispose();
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting("ConnectionStrings:Shop", _database.ConnectionString);
        builder.UseSetting("GRINDSHOP_SEED", ShopTemplates.SeedFolder);
        builder.UseSetting("GRINDSHOP_MAIL_FOLDER", _mail.Path);
        builder.UseEnvironment("Production");
    }
}
