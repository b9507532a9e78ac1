namespace GrindShop.Lobes;

/// <summary>
/// A lift law run by a follower on a base circle; gives contour points and curvature (formulas: docs/mathematics.md, contour).
/// </summary>
internal readonly record struct Rolling(LiftLaw Law, Follower Follower, double BaseRadiusIn)
{
    public bool IsFlat => Follower.Kind == FollowerKind.Flat;

    /// <summary>The point touched at a cam angle, moved outward along the normal by an offset.</summary>
    public ContourPoint At(double camRad, double offsetIn = 0)
    {
        var s = Law.At(camRad);
        return IsFlat ? FlatPoint(camRad, s, offsetIn) : RollerPoint(camRad, s, offsetIn);
    }

    /// <summary>Angle between the roller's travel and the contour normal, rad: <c>tan a = s'/R</c>.</summary>
    public double PressureAngleRad(double camRad)
    {
        var s = Law.At(camRad);
        return Math.Atan2(s.VelocityInPerRad, BaseRadiusIn + Follower.RadiusIn + s.LiftIn);
    }

    private ContourPoint RollerPoint(double camRad, LiftPoint s, double offsetIn)
    {
        double r = BaseRadiusIn + Follower.RadiusIn + s.LiftIn, v = s.VelocityInPerRad, h2 = r * r + v * v;
        var normal = camRad - Math.Atan2(v, r);
        var inward = offsetIn - Follower.RadiusIn;
        var curvature = (h2 + v * v - r * s.AccelerationInPerRad2) / (h2 * Math.Sqrt(h2));
        return new(
            camRad,
            r * Math.Cos(camRad) + inward * Math.Cos(normal),
            r * Math.Sin(camRad) + inward * Math.Sin(normal),
            normal,
            curvature < 0,
            curvature < 0 ? -1 / curvature - inward : 1 / curvature + inward);
    }

    private ContourPoint FlatPoint(double camRad, LiftPoint s, double offsetIn)
    {
        double h = BaseRadiusIn + s.LiftIn + offsetIn, v = s.VelocityInPerRad, cos = Math.Cos(camRad), sin = Math.Sin(camRad);
        return new(camRad, h * cos - v * sin, h * sin + v * cos, camRad, false, h + s.AccelerationInPerRad2);
    }
}
