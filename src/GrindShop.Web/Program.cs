using System.Globalization;
using GrindShop.Shop.Records;
using GrindShop.Web.Api;
using GrindShop.Web.Security;
using GrindShop.Web.Shell;

namespace GrindShop.Web;

public sealed class Program
{
    internal const string UsualAddress = "http://127.0.0.1:5080";

    public static async Task<int> Main(string[] args)
    {
        try
        {
            await RunAsync(args);
            return 0;
        }
        catch (Exception error) when (StartFailure.Explain(error) is { } line)
        {
            await Console.Error.WriteLineAsync($"GrindShop cannot start: {line}");
            return 1;
        }
    }

    private static async Task RunAsync(string[] args)
    {
        // Inches and dollars are written with a point, in whatever country the server stands.
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        var builder = WebApplication.CreateBuilder(args);
        builder.WebHost.UseStaticWebAssets();
        if (string.IsNullOrEmpty(builder.Configuration["urls"]) && string.IsNullOrEmpty(builder.Configuration["http_ports"]))
            builder.WebHost.UseUrls(UsualAddress);
        await using var database = await ShopDatabase.OpenAsync(builder.Configuration);
        builder.AddWeb(database.ConnectionString);
        await using var app = builder.Build();
        app.UseWeb();
        await database.PrepareAsync();
        app.Lifetime.ApplicationStarted.Register(() => StartBanner.Print(app));
        await app.RunAsync();
    }
}
