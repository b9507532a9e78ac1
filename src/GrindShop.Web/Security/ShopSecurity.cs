using GrindShop.Shop.People;
using GrindShop.Shop.Records;
using Microsoft.AspNetCore.Identity;

namespace GrindShop.Web.Security;

internal static class ShopSecurity
{
    public static void AddShopSecurity(this IServiceCollection services)
    {
        services.AddScoped(provider => provider.GetRequiredService<Microsoft.EntityFrameworkCore.IDbContextFactory<ShopDb>>().CreateDbContext());
        services.AddIdentityCore<ShopUser>(options =>
            {
                options.User.RequireUniqueEmail = true;
                options.Lockout.MaxFailedAccessAttempts = 8;
                options.Lockout.DefaultLockoutTimeSpan = TimeSpan.FromMinutes(5);
            })
            .AddRoles<IdentityRole>()
            .AddEntityFrameworkStores<ShopDb>()
            .AddSignInManager()
            .AddClaimsPrincipalFactory<ShopClaims>();
        services.AddAuthentication(IdentityConstants.ApplicationScheme).AddCookie(IdentityConstants.ApplicationScheme, options =>
        {
            options.LoginPath = "/sign-in";
            options.AccessDeniedPath = "/not-allowed";
            options.ReturnUrlParameter = "returnUrl";
            options.Cookie.Name = "grindshop";
            options.Cookie.SameSite = SameSiteMode.Lax;
            options.ExpireTimeSpan = TimeSpan.FromDays(14);
            options.SlidingExpiration = true;
            options.Events.OnValidatePrincipal = SecurityStampValidator.ValidatePrincipalAsync;
            options.Events.OnRedirectToLogin = context => ApiOrPage(context, StatusCodes.Status401Unauthorized);
            options.Events.OnRedirectToAccessDenied = context => ApiOrPage(context, StatusCodes.Status403Forbidden);
        });
        services.Configure<SecurityStampValidatorOptions>(options => options.ValidationInterval = StillSignedIn.Patience);
        services.AddSingleton<Settings.PeopleBook>();
        services.AddAuthorization(Policies.Add);
        services.AddCascadingAuthenticationState();
        services.AddAntiforgery();
    }

    public static void UseShopSecurity(this WebApplication app)
    {
        app.Use(SecurityHeaders.Add);
        app.UseAuthentication();
        app.UseAuthorization();
        app.UseAntiforgery();
    }

    /// <summary>A program is told with a status, a person is sent to the page that helps.</summary>
    private static Task ApiOrPage(Microsoft.AspNetCore.Authentication.RedirectContext<Microsoft.AspNetCore.Authentication.Cookies.CookieAuthenticationOptions> context, int status)
    {
        if (context.Request.Path.StartsWithSegments("/api"))
            context.Response.StatusCode = status;
        else
            context.Response.Redirect(context.RedirectUri);
        return Task.CompletedTask;
    }
}
