using CsCheck;

namespace GrindShop.Lobes.Tests;

public class LineContactTests
{
    // Boresi & Schmidt, Advanced Mechanics of Materials, p. 621: two steel cylinders; the book prints 1445 MPa.
    [Fact]
    public void Two_steel_cylinders_of_the_textbook()
    {
        var contact = Metric(24_100, 20, 40, 40, (200, .29), (200, .29));
        Assert.Equal(1447.04, Si.MegapascalsFromPsi(contact.PeakPressurePsi), 0.01);
        Assert.Equal(1445, Si.MegapascalsFromPsi(contact.PeakPressurePsi), 3.0);
        Assert.Equal(.530136, contact.HalfWidthIn * 25.4, 1e-6);
    }

    // Exact, from the formula in high precision; constants of steel from Shigley (memory), of ductile iron from Callister (v from memory).
    [Theory]
    [InlineData(207, .292, .118601, 447.3126)]
    [InlineData(169, .275, .125453, 422.8822)]
    public void A_steel_roller_on_a_flat(double gpa, double poisson, double halfWidthMm, double mpa)
    {
        var contact = Metric(1000, 12, 15, null, (207, .292), (gpa, poisson));
        Assert.Equal(halfWidthMm, contact.HalfWidthIn * 25.4, 1e-6);
        Assert.Equal(mpa, Si.MegapascalsFromPsi(contact.PeakPressurePsi), 1e-3);
    }

    [Fact]
    public void The_ellipse_of_pressure_carries_the_force() => Cases.Sample((force, width, radius, lobe) =>
    {
        var contact = Steel(force, width, radius, lobe);
        return Math.Abs(contact.PeakPressurePsi * Math.PI * contact.HalfWidthIn / 2 * width - force) < 1e-9 * force;
    });

    [Fact]
    public void The_bodies_may_change_places() => Cases.Sample((force, width, radius, lobe) =>
        Math.Abs(Steel(force, width, radius, lobe).PeakPressurePsi / Steel(force, width, lobe, radius).PeakPressurePsi - 1) < 1e-12);

    [Fact]
    public void Four_times_the_force_doubles_pressure_and_width() => Cases.Sample((force, width, radius, lobe) =>
    {
        var (one, four) = (Steel(force, width, radius, lobe), Steel(4 * force, width, radius, lobe));
        return Math.Abs(four.PeakPressurePsi / one.PeakPressurePsi - 2) < 1e-12
            && Math.Abs(four.HalfWidthIn / one.HalfWidthIn - 2) < 1e-12;
    });

    [Fact]
    public void A_concave_flank_is_pressed_less_than_a_flat_and_a_flat_less_than_a_nose()
    {
        var (concave, flat, nose) = (Steel(500, .6, .375, -1.5), Steel(500, .6, .375, null), Steel(500, .6, .375, .5));
        Assert.True(concave.PeakPressurePsi < flat.PeakPressurePsi && flat.PeakPressurePsi < nose.PeakPressurePsi);
        Assert.Equal(Math.Sqrt(1 - .375 / 1.5), concave.PeakPressurePsi / flat.PeakPressurePsi, 1e-12);
    }

    // tau = .3003 p0 at .786 b: Johnson, Contact Mechanics, and Roark's Formulas (memory). Here sought along the axis step by step.
    [Fact]
    public void The_greatest_shear_lies_below_the_surface()
    {
        var contact = Steel(500, .6, .375, 1);
        var depths = Enumerable.Range(0, 30_001).Select(k => k * 1e-4).ToList();
        var worst = depths.MaxBy(Shear);
        Assert.Equal(worst, contact.MaxShearDepthIn / contact.HalfWidthIn, 1e-3);
        Assert.Equal(Shear(worst), contact.MaxShearPsi / contact.PeakPressurePsi, 1e-8);
        Assert.Equal(.3003, contact.MaxShearPsi / contact.PeakPressurePsi, 5e-5);
        Assert.Equal(.786, contact.MaxShearDepthIn / contact.HalfWidthIn, 5e-4);
    }

    [Fact]
    public void No_line_no_contact()
    {
        Assert.Equal(new ContactProblem.BothFlat(), Try(null, null).Problem);
        Assert.Equal(new ContactProblem.Conforming(.375, .375), Try(.375, -.375).Problem);
        Assert.Equal(new ContactProblem.Conforming(.3, .375), Try(-.3, .375).Problem);
        Assert.Equal(new ContactProblem.CannotReach(.3), Try(null, -.3).Problem);
        Assert.Equal(new ContactProblem.CannotReach(.3), Try(-.3, -.4).Problem);
        Assert.True(Try(.375, -.376).Succeeded);
    }

    [Fact]
    public void A_nearly_conforming_flank_is_marked()
    {
        Assert.True(Steel(500, .6, .375, 1).IsNarrow);
        Assert.False(Steel(500, .6, .375, -.375001).IsNarrow);
    }

    [Fact]
    public void No_force_no_pressure() => Assert.Equal(new LineContact(0, 0, 0, true), Steel(0, .6, .375, 1));

    [Theory]
    [InlineData(double.NaN, .6, .375, 3e7, .3, "forceLbf")]
    [InlineData(-1, .6, .375, 3e7, .3, "forceLbf")]
    [InlineData(500, 0, .375, 3e7, .3, "widthIn")]
    [InlineData(500, .6, 0, 3e7, .3, "radius1In")]
    [InlineData(500, .6, double.NegativeInfinity, 3e7, .3, "radius1In")]
    [InlineData(500, .6, .375, 0, .3, "modulus1Psi")]
    [InlineData(500, .6, .375, 3e7, .7, "poisson1")]
    public void Nonsense_is_refused_by_name(double force, double width, double radius, double modulus, double poisson, string name) =>
        Assert.Throws<ArgumentOutOfRangeException>(name, () => LineContact.Of(force, width, radius, null, modulus, 3e7, poisson, .3));

    private static Gen<(double Force, double Width, double Radius, double Lobe)> Cases =>
        Gen.Select(Gen.Double[1, 2000], Gen.Double[.2, 1.5], Gen.Double[.2, 1], Gen.Double[.1, 50]);

    // Stresses under the middle of the strip (Johnson): half their difference, as a share of the peak pressure.
    private static double Shear(double z)
    {
        var along = -((1 + 2 * z * z) / Math.Sqrt(1 + z * z) - 2 * z);
        var into = -1 / Math.Sqrt(1 + z * z);
        return (along - into) / 2;
    }

    private static Outcome<LineContact, ContactProblem> Try(double? one, double? other) =>
        LineContact.Of(500, .6, one, other, 3e7, 3e7, .29, .29);

    private static LineContact Steel(double force, double width, double? one, double? other) =>
        LineContact.Of(force, width, one, other, 3e7, 3e7, .29, .29).Required();

    private static LineContact Metric(
        double newtons,
        double widthMm,
        double oneMm,
        double? otherMm,
        (double Gpa, double Poisson) one,
        (double Gpa, double Poisson) other) =>
        LineContact.Of(
            Si.LbfFromNewtons(newtons),
            Si.InFromMillimetres(widthMm),
            Si.InFromMillimetres(oneMm),
            otherMm is { } mm ? Si.InFromMillimetres(mm) : null,
            Si.PsiFromGigapascals(one.Gpa),
            Si.PsiFromGigapascals(other.Gpa),
            one.Poisson,
            other.Poisson).Required();
}
