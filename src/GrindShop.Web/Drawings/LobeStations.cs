using GrindShop.Lobes;
using GrindShop.Shop.Blanks;

namespace GrindShop.Web.Drawings;

/// <summary>A lobe on its base circle as the contact calculation wants it, place by place.</summary>
public static class LobeStations
{
    private const int StepCamDeg = 2;

    /// <summary>Every second cam degree from -180 on.</summary>
    public static IReadOnlyList<LobeStation> Of(FinishLobe lobe, LobeContour contour) =>
        [.. Enumerable.Range(0, 360 / StepCamDeg + 1).Select(i => Station(lobe, contour, -180 + i * StepCamDeg))];

    /// <summary>The alloy of a blank by its name in the kernel.</summary>
    public static CamAlloy Kernel(this BlankAlloy alloy) => alloy switch
    {
        BlankAlloy.HardenableIron => CamAlloy.HardenableGrayIron,
        BlankAlloy.AustemperedDuctileIron => CamAlloy.AustemperedDuctileIron,
        BlankAlloy.Steel1050 => CamAlloy.Sae1050,
        BlankAlloy.Steel1055 => CamAlloy.Sae1055,
        BlankAlloy.Steel5150 => CamAlloy.Sae5150,
        BlankAlloy.Steel5160 => CamAlloy.Sae5160,
        BlankAlloy.Steel8620 => CamAlloy.Sae8620,
        BlankAlloy.Steel8660 => CamAlloy.Sae8660,
        _ => CamAlloy.ToolSteel,
    };

    /// <summary>Pressure angle: <c>tan a = s' / (Rb + Rf + s)</c>; none under a flat face.</summary>
    private static LobeStation Station(FinishLobe lobe, LobeContour contour, double camDeg)
    {
        var rad = double.DegreesToRadians(camDeg);
        var (lift, touched) = (lobe.Law.At(rad), contour.TouchedAt(rad));
        var pressureRad = lobe.Follower.Kind == FollowerKind.Flat ? 0 : Math.Atan2(lift.VelocityInPerRad, contour.BaseCircleDiameterIn / 2 + lobe.Follower.RadiusIn + lift.LiftIn);
        double? radius = double.IsFinite(touched.RadiusIn) ? touched.IsConcave ? -touched.RadiusIn : touched.RadiusIn : null;
        return new LobeStation(camDeg, lift.LiftIn, lift.AccelerationInPerRad2, double.RadiansToDegrees(pressureRad), radius);
    }
}
