using System.Collections.Immutable;

namespace GrindShop.Lobes;

/// <summary>Nearest point of a window's edge by plain distance in the plane of separation and intake centreline.</summary>
internal static class NearestPhase
{
    public static CamPhase In(ImmutableArray<CamPhase> corners, CamPhase wanted) =>
        Enumerable.Range(0, corners.Length)
            .Select(i => OnSide(corners[i], corners[(i + 1) % corners.Length], wanted))
            .MinBy(p => Squared(p, wanted));

    private static CamPhase OnSide(CamPhase a, CamPhase b, CamPhase wanted)
    {
        double dx = b.LobeSeparationCamDeg - a.LobeSeparationCamDeg, dy = b.IntakeCenterlineCrankDeg - a.IntakeCenterlineCrankDeg;
        double px = wanted.LobeSeparationCamDeg - a.LobeSeparationCamDeg, py = wanted.IntakeCenterlineCrankDeg - a.IntakeCenterlineCrankDeg;
        var length = dx * dx + dy * dy;
        var t = length == 0 ? 0 : Math.Clamp((px * dx + py * dy) / length, 0, 1);
        return new(a.LobeSeparationCamDeg + t * dx, a.IntakeCenterlineCrankDeg + t * dy);
    }

    private static double Squared(CamPhase a, CamPhase b)
    {
        double dx = a.LobeSeparationCamDeg - b.LobeSeparationCamDeg, dy = a.IntakeCenterlineCrankDeg - b.IntakeCenterlineCrankDeg;
        return dx * dx + dy * dy;
    }
}
