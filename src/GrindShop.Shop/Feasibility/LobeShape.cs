using System.Globalization;
using GrindShop.Lobes;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>What the shape of a finished lobe itself forbids or advises against, whatever the blank.</summary>
internal static class LobeShape
{
    public static IEnumerable<string> Objections(string name, FinishLobe lobe, FinishedCam cam, double baseCircleDiameterIn)
    {
        if (baseCircleDiameterIn < lobe.LeastBaseCircleDiameterIn)
            yield return $"The {name} lobe cannot be ground at a base circle of {In(baseCircleDiameterIn)} in: the lifter would undercut it.";
        if (OutgrowsFoot(lobe, cam.Grind))
            yield return $"The {name} lobe is too fast for this tappet: it needs a foot of {In(2 * lobe.Law.MaxVelocityInPerRad)} in, and the foot is {In(cam.Grind.FollowerDiameterIn)} in.";
    }

    /// <summary>The lobe touches a flat foot farther out than the foot goes.</summary>
    public static bool OutgrowsFoot(FinishLobe lobe, GrindSpec grind) =>
        lobe.Follower.Kind == FollowerKind.Flat && lobe.Law.MaxVelocityInPerRad > grind.FollowerDiameterIn / 2;

    public static string? Advice(string name, FinishLobe lobe, double baseCircleDiameterIn) =>
        lobe.IsSteep(baseCircleDiameterIn)
            ? string.Create(CultureInfo.InvariantCulture, $"The {name} lobe presses its roller at up to {lobe.PressureAngleDeg(baseCircleDiameterIn):0} degrees; {FinishLobe.UsualPressureAngleDeg:0} is the usual limit.")
            : null;

    private static string In(double value) => value.ToString("0.000", CultureInfo.InvariantCulture);
}
