using GrindShop.Shop.People;
using Microsoft.AspNetCore.Identity;

namespace GrindShop.Web.Security;

internal static class SignInOut
{
    public static void MapSignInOut(this WebApplication app) =>
        app.MapPost("/sign-out", async (SignInManager<ShopUser> signIn) =>
        {
            await signIn.SignOutAsync();
            return Results.LocalRedirect("/");
        }).AllowAnonymous().ExcludeFromDescription();
}
