namespace GrindShop.Lobes.Tests;

/// <summary>Whole cams whose contour or motion is known in closed form (exact).</summary>
public class KnownCamTests
{
    private const double Mm = 1 / 25.4;

    [Fact]
    public void An_eccentric_circle_under_a_flat_face_is_that_circle()
    {
        var contour = LobeContour.Of(Eccentric(6 * Mm), Follower.Flat, 2 * 19 * Mm);

        Assert.All(contour.Points, p => Assert.Equal(25 * Mm, p.RadiusIn, 1e-12));
        Assert.All(contour.Points, p => Assert.Equal(25 * Mm, Math.Sqrt(Math.Pow(p.XIn - 6 * Mm, 2) + p.YIn * p.YIn), 1e-12));
        Assert.Equal(6 * Mm, contour.MinFootRadiusIn!.Value, 1e-12);
        Assert.Equal(-6 * Mm * Math.Sin(1), TangentialOffset(contour, 1), 1e-6);
    }

    [Fact]
    public void The_same_circle_under_a_roller_of_9_mm()
    {
        var law = new RolledLaw(Eccentric(6 * Mm), Follower.Flat, 2 * 19 * Mm, Follower.Roller(9 * Mm));
        var contour = LobeContour.Of(law, Follower.Roller(9 * Mm), 2 * 19 * Mm);

        Assert.Equal(5.4664011 * Mm, law.At(Math.PI / 2).LiftIn, 1e-8);
        Assert.Equal(10.1642486, contour.MaxPressureAngleDeg!.Value, 1e-7);
        Assert.All(contour.Points, p => Assert.Equal(34 * Mm, p.RadiusIn + 9 * Mm, 1e-9));
    }

    // Harmonic over the whole turn, 50 mm in all, least radius 25 mm, flat face: a circle of radius 50 centred 25 off the shaft.
    [Fact]
    public void A_whole_turn_harmonic_is_a_circle()
    {
        var law = new RiseLaw(50 * Mm, Math.PI, RiseLaw.Harmonic);

        Assert.All(LobeContour.Of(law, Follower.Flat, 50 * Mm).Points, p =>
            Assert.Equal(50 * Mm, Math.Sqrt(Math.Pow(p.XIn - 25 * Mm, 2) + p.YIn * p.YIn), 1e-12));
    }

    // Cycloidal, 10 mm in 60 degrees, flat face: least s + s'' is -48.226968 at 44.727126 degrees of the rise; least foot 19.098593.
    [Fact]
    public void A_cycloidal_rise_needs_its_known_base_radius()
    {
        var law = new RiseLaw(10 * Mm, Math.PI / 3, RiseLaw.Cycloidal);
        var contour = LobeContour.Of(law, Follower.Flat, 2 * 53.226968 * Mm);

        Assert.Equal(5 * Mm, contour.MinConvexRadiusIn, 1e-7);
        Assert.Equal(19.098593 * Mm, contour.MinFootRadiusIn!.Value, 1e-7);
        var sharpest = law.At(Everyday.Rad(44.727126 - 60));
        Assert.Equal(-48.226968 * Mm, sharpest.LiftIn + sharpest.AccelerationInPerRad2, 1e-8);
        Assert.False(contour.IsUndercut);
        Assert.True(LobeContour.Of(law, Follower.Flat, 2 * 48 * Mm).IsUndercut);
    }

    // Data: Khurmi & Gupta, Theory of Machines, ch. 20 (from memory); answers exact: v = w (R - r1) sin a, a = w^2 (R - r1) cos a.
    [Fact]
    public void A_circular_arc_cam_is_three_circles_and_has_the_books_motion()
    {
        const double radPerSecond = 600 * Math.PI / 30;
        var law = ArcCam.UnderFlat;
        var contour = LobeContour.Of(law, Follower.Flat, 60 * Mm, 7200);
        double flank = 82.422115 * Mm, junction = Everyday.Rad(75 - 34.15436);

        foreach (var p in contour.Points)
        {
            var at = Math.Abs(p.CamRad);
            var expected = at < junction - 1e-6 ? 5 * Mm : at < Everyday.Rad(75) - 1e-6 ? flank : 30 * Mm;
            if (Math.Abs(at - junction) > 1e-4 && Math.Abs(at - Everyday.Rad(75)) > 1e-4)
                Assert.Equal(expected, p.RadiusIn, 1e-7);
        }
        Assert.Equal(1.849208, law.MaxVelocityInPerRad * 0.0254 * radPerSecond, 1e-6);
        Assert.Equal(9.0413443 * Mm, law.At(junction).LiftIn, 1e-7);
        Assert.Equal(206.9542, Acceleration(Everyday.Rad(75) - 1e-9), 1e-3);
        Assert.Equal(171.2604, Acceleration(junction + 1e-6), 1e-3);
        Assert.Equal(-134.3898, Acceleration(junction - 1e-6), 1e-3);
        Assert.Equal(-177.6529, Acceleration(0), 1e-3);

        double Acceleration(double rad) => law.At(rad).AccelerationInPerRad2 * 0.0254 * radPerSecond * radPerSecond;
    }

    // Lift and velocity run on across the junctions by both formulas.
    [Fact]
    public void The_arc_cams_lift_and_velocity_are_continuous()
    {
        foreach (var at in new[] { Everyday.Rad(75), Everyday.Rad(75 - 34.154360) })
        {
            LiftPoint before = ArcCam.UnderFlat.At(at - 1e-7), after = ArcCam.UnderFlat.At(at + 1e-7);
            Assert.Equal(before.LiftIn, after.LiftIn, 1e-6);
            Assert.Equal(before.VelocityInPerRad, after.VelocityInPerRad, 2e-6);
        }
    }

    /// <summary>How far the touching point lies from the follower's line of travel, in.</summary>
    private static double TangentialOffset(LobeContour contour, double camRad)
    {
        var p = contour.Points.MinBy(p => Math.Abs(p.CamRad - camRad));
        return (p.YIn * Math.Cos(p.CamRad) - p.XIn * Math.Sin(p.CamRad)) * Math.Sin(camRad) / Math.Sin(p.CamRad);
    }

    private static EccentricLaw Eccentric(double e) => new(e);

    private sealed class EccentricLaw(double e) : LiftLaw
    {
        public override double LobeLiftIn => 2 * e;

        public override double SupportStartRad => -Math.PI;

        public override double SupportEndRad => Math.PI;

        public override LiftPoint At(double camRad) =>
            new(e * (1 + Math.Cos(camRad)), -e * Math.Sin(camRad), -e * Math.Cos(camRad));
    }

    /// <summary>Base radius 30 mm, lift 20, ascent 75 degrees, nose radius 5; the flank's radius and angle follow.</summary>
    private sealed class ArcCam : LiftLaw
    {
        private const double Base = 30 * Mm, Nose = 5 * Mm, NoseCentre = 45 * Mm;
        private static readonly double Ascent = Everyday.Rad(75);

        // The flank circle touches base circle and nose circle from inside: cosine rule on shaft, nose centre, flank centre.
        private static readonly double Flank =
            (Base * Base - Nose * Nose + NoseCentre * NoseCentre - 2 * Base * NoseCentre * Math.Cos(Ascent))
            / (2 * (Base - Nose - NoseCentre * Math.Cos(Ascent)));

        private static readonly double FlankAngle = Math.Asin(NoseCentre * Math.Sin(Ascent) / (Flank - Nose));

        public static ArcCam UnderFlat { get; } = new();

        public override double LobeLiftIn => 20 * Mm;

        public override double SupportStartRad => -Ascent;

        public override double SupportEndRad => Ascent;

        public override LiftPoint At(double camRad)
        {
            double theta = Math.IEEERemainder(camRad, Math.Tau), at = Math.Abs(theta), sign = Math.Sign(theta), a = Ascent - at;
            if (a <= 0)
                return LiftPoint.Dwell;
            return a < FlankAngle
                ? new((Flank - Base) * (1 - Math.Cos(a)), -sign * (Flank - Base) * Math.Sin(a), (Flank - Base) * Math.Cos(a))
                : new(NoseCentre * Math.Cos(at) + Nose - Base, -sign * NoseCentre * Math.Sin(at), -NoseCentre * Math.Cos(at));
        }
    }
}
