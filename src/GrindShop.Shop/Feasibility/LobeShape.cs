using System.Globalization;
using GrindShop.Lobes;

namespace GrindShop.Shop.Feasibility;

/// <summary>What the shape of a finished lobe itself forbids or advises against, whatever the blank.</summary>
internal static class LobeShape
{
    /// <summary>Usual limit of the pressure angle of a translating roller, degrees (lecture notes by Soylemez, METU).</summary>
    private const double UsualPressureAngleDeg = 30;

    public static IEnumerable<string> Objections(string name, FinishLobe lobe, FinishedCam cam, double baseCircleDiameterIn)
    {
        if (baseCircleDiameterIn < lobe.LeastBaseCircleDiameterIn)
            yield return $"The {name} lobe cannot be ground at a base circle of {In(baseCircleDiameterIn)} in: the lifter would undercut it.";
        var foot = lobe.Law.MaxVelocityInPerRad;
        if (lobe.Follower.Kind == FollowerKind.Flat && foot > cam.Grind.FollowerDiameterIn / 2)
            yield return $"The {name} lobe is too fast for this tappet: it needs a foot of {In(2 * foot)} in, and the foot is {In(cam.Grind.FollowerDiameterIn)} in.";
    }

    public static string? Advice(string name, FinishLobe lobe, double baseCircleDiameterIn) =>
        lobe.PressureAngleDeg(baseCircleDiameterIn) is { } angle && angle > UsualPressureAngleDeg
            ? string.Create(CultureInfo.InvariantCulture, $"The {name} lobe presses its roller at up to {angle:0} degrees; {UsualPressureAngleDeg:0} is the usual limit.")
            : null;

    private static string In(double value) => value.ToString("0.000", CultureInfo.InvariantCulture);
}
