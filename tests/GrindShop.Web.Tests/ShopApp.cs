using GrindShop.Testing;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Xunit;

namespace GrindShop.Web.Tests;

/// <summary>The whole application on a copy of the scenario, one for each test class.</summary>
public sealed class ShopApp : WebApplicationFactory<Program>, IAsyncLifetime
{
    private TestDatabase _database = null!;

    public string ConnectionString => _database.ConnectionString;

    public async Task InitializeAsync() => _database = await ShopTemplates.Scenario.CopyAsync();

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeAsync();
        await _database.DisposeAsync();
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting("ConnectionStrings:Shop", _database.ConnectionString);
        builder.UseSetting("GRINDSHOP_SEED", ShopTemplates.SeedFolder);
        builder.UseEnvironment("Production");
    }
}
