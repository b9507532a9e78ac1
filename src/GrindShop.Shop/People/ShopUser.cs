using Microsoft.AspNetCore.Identity;

namespace GrindShop.Shop.People;

/// <summary>Somebody who works in the shop and signs in.</summary>
public sealed class ShopUser : IdentityUser
{
    /// <summary>The name that stands in histories and on papers.</summary>
    public string DisplayName { get; set; } = "";
}

public static class Roles
{
    public const string Desk = "Desk";
    public const string Floor = "Floor";
    public const string Owner = "Owner";

    public static readonly IReadOnlyList<string> All = [Desk, Floor, Owner];
}
