using GrindShop.Shop.People;
using Microsoft.AspNetCore.Authorization;

namespace GrindShop.Web.Security;

/// <summary>Who may open what. Every page and endpoint names one of these, or says that it is public.</summary>
public static class Policies
{
    /// <summary>The front desk's work: inbox, orders, prices.</summary>
    public const string Desk = "desk";

    /// <summary>The floor's work: jobs and their steps.</summary>
    public const string Floor = "floor";

    /// <summary>The owner's numbers.</summary>
    public const string Office = "office";

    /// <summary>Rules, limits, prices and people: the owner's to set.</summary>
    public const string Settings = "settings";

    /// <summary>Papers that desk and floor print.</summary>
    public const string Staff = "staff";

    public static void Add(AuthorizationOptions options)
    {
        options.AddPolicy(Desk, policy => policy.RequireRole(Roles.Desk, Roles.Owner));
        options.AddPolicy(Floor, policy => policy.RequireRole(Roles.Floor, Roles.Owner));
        options.AddPolicy(Office, policy => policy.RequireRole(Roles.Owner));
        options.AddPolicy(Settings, policy => policy.RequireRole(Roles.Owner));
        options.AddPolicy(Staff, policy => policy.RequireRole(Roles.Desk, Roles.Floor, Roles.Owner));
        options.FallbackPolicy = new AuthorizationPolicyBuilder().RequireAuthenticatedUser().Build();
    }
}
