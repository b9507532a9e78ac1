using GrindShop.Shop;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Records;
using GrindShop.Web.Api;
using GrindShop.Web.Security;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.DataProtection;
using MudBlazor.Services;

namespace GrindShop.Web.Shell;

/// <summary>Everything the web application is made of: services first, then the pipeline.</summary>
public static class WebServices
{
    /// <summary>What a browser may send at once: a long mail that is pasted in, escaped as JSON. The framework's own limit of 32 kB would end the page.</summary>
    private const int LargestMessageBytes = 512 * 1024;

    public static void AddWeb(this WebApplicationBuilder builder, string connectionString)
    {
        var services = builder.Services;
        services.AddSingleton(MailSettings.From(builder.Configuration, ShopAddress.Of(builder.Configuration)));
        services.AddSingleton<PrintPapers>(provider => ActivatorUtilities.CreateInstance<MailedPapers>(provider).PrintAsync);
        services.AddShop(connectionString);
        services.AddDataProtection().SetApplicationName("GrindShop").PersistKeysToDbContext<ShopDb>();
        services.AddShopSecurity();
        services.AddShopApi();
        services.AddRazorComponents().AddInteractiveServerComponents()
            .AddHubOptions(hub => hub.MaximumReceiveMessageSize = LargestMessageBytes);
        services.AddScoped<AuthenticationStateProvider, StillSignedIn>();
        services.AddMudServices();
        services.AddScoped<ThemeChoice>();
        services.AddSingleton<Office.BlankBook>();
        services.AddHealthChecks().AddDbContextCheck<ShopDb>("database");
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.Limits.MaxRequestBodySize = 1_000_000);
    }

    /// <summary>Programs get problem details, not pages.</summary>
    private static bool IsApi(HttpContext context) => context.Request.Path.StartsWithSegments("/api/v1");

    public static void UseWeb(this WebApplication app)
    {
        app.UseExceptionHandler("/error", createScopeForErrors: true);
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.UseWhen(IsApi, api => api.UseExceptionHandler().UseStatusCodePages());
        app.UseShopSecurity();
        app.MapStaticAssets().AllowAnonymous();
        app.MapShopApi();
        app.MapPapers();
        app.MapMails();
        app.MapBlanks();
        app.MapTables();
        app.MapSignInOut();
        app.MapHealth();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode().Add(OpenCircuit);
        app.MapFallback(() => Results.NotFound()).AllowAnonymous();
    }

    /// <summary>Public pages are live too, so anybody may open a circuit; every page names its own policy.</summary>
    private static void OpenCircuit(EndpointBuilder endpoint)
    {
        if (endpoint is RouteEndpointBuilder { RoutePattern.RawText: { } path } && path.TrimStart('/').StartsWith("_blazor", StringComparison.Ordinal))
            endpoint.Metadata.Add(new Microsoft.AspNetCore.Authorization.AllowAnonymousAttribute());
    }
}
