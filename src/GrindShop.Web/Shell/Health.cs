using Microsoft.AspNetCore.Diagnostics.HealthChecks;

namespace GrindShop.Web.Shell;

internal static class Health
{
    /// <summary>Live: the process answers. Ready: its database answers too.</summary>
    public static void MapHealth(this WebApplication app)
    {
        app.MapHealthChecks("/healthz/live", new HealthCheckOptions { Predicate = _ => false }).AllowAnonymous();
        app.MapHealthChecks("/healthz/ready").AllowAnonymous();
    }
}
