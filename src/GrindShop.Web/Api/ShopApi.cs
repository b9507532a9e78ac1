namespace GrindShop.Web.Api;

internal static class ShopApi
{
    public static void AddShopApi(this IServiceCollection services)
    {
        services.AddProblemDetails();
        services.AddOpenApi();
    }

    public static void MapShopApi(this WebApplication app)
    {
        app.MapOpenApi().AllowAnonymous();
    }
}
