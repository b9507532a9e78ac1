using System.Security.Claims;
using GrindShop.Shop.People;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace GrindShop.Web.Security;

/// <summary>Adds the name that stands in histories to the signed-in person's claims.</summary>
internal sealed class ShopClaims(UserManager<ShopUser> users, RoleManager<IdentityRole> roles, IOptions<IdentityOptions> options)
    : UserClaimsPrincipalFactory<ShopUser, IdentityRole>(users, roles, options)
{
    protected override async Task<ClaimsIdentity> GenerateClaimsAsync(ShopUser user)
    {
        var identity = await base.GenerateClaimsAsync(user);
        identity.AddClaim(new Claim(ClaimTypes.GivenName, user.DisplayName));
        return identity;
    }
}

public static class Signer
{
    /// <summary>The name under which this person's acts are written down.</summary>
    public static string SignsAs(this ClaimsPrincipal person) =>
        person.FindFirstValue(ClaimTypes.GivenName) is { Length: > 0 } name ? name : person.Identity?.Name ?? "unknown";
}
