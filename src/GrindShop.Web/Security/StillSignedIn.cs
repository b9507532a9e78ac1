using System.Security.Claims;
using GrindShop.Shop.People;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace GrindShop.Web.Security;

/// <summary>Closes the open pages of a person whose password, work or right to sign in has changed.</summary>
internal sealed class StillSignedIn(ILoggerFactory log, IServiceScopeFactory scopes, IOptions<IdentityOptions> options)
    : RevalidatingServerAuthenticationStateProvider(log)
{
    /// <summary>How long a change may go unnoticed, by an open page or a cookie.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);

    protected override TimeSpan RevalidationInterval => Patience;

    protected override async Task<bool> ValidateAuthenticationStateAsync(AuthenticationState state, CancellationToken cancel)
    {
        await using var scope = scopes.CreateAsyncScope();
        var users = scope.ServiceProvider.GetRequiredService<UserManager<ShopUser>>();
        return await users.GetUserAsync(state.User) is { } user
            && state.User.FindFirstValue(options.Value.ClaimsIdentity.SecurityStampClaimType) == await users.GetSecurityStampAsync(user);
    }
}
