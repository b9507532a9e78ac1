using CsCheck;

namespace GrindShop.Lobes.Tests.Metal;

public sealed class PressureAngleTests
{
    // The refined figure of the contour is checked against the eccentric circle, which has an exact answer; this one only has to stand beside it.
    [Theory]
    [InlineData(.9)]
    [InlineData(1.1)]
    [InlineData(1.4)]
    public void Advice_stands_within_a_hundredth_of_a_degree_of_the_contour(double baseCircle)
    {
        var law = PolynomialLaw.Solve(new LobeSpec(.42, 240, 286, .006));
        var roller = Follower.Roller(.375);

        Assert.Equal(LobeContour.Of(law, roller, baseCircle).MaxPressureAngleDeg!.Value, new FinishLobe(law, roller).PressureAngleDeg(baseCircle)!.Value, .01);
    }

    [Fact]
    public void A_lobe_is_steep_exactly_where_its_angle_exceeds_the_usual_one() => Gen.Select(Gen.Double[.15, .5], Gen.Double[190, 280], Gen.Double[.2, .6], Gen.Double[.6, 2]).Sample((lift, at050, roller, baseCircle) =>
    {
        if (!PolynomialLaw.TrySolve(new LobeSpec(lift, at050, at050 + 50, .006), out var law, out _))
            return;
        var lobe = new FinishLobe(law, Follower.Roller(roller));
        var angle = lobe.PressureAngleDeg(baseCircle)!.Value;
        if (Math.Abs(angle - FinishLobe.UsualPressureAngleDeg) > 1e-9)
            Assert.Equal(angle > FinishLobe.UsualPressureAngleDeg, lobe.IsSteep(baseCircle));
    });

    [Fact]
    public void A_flat_face_has_none() =>
        Assert.Null(new FinishLobe(PolynomialLaw.Solve(new LobeSpec(.3, 220, 270, .006)), Follower.Flat).PressureAngleDeg(1.1));

    [Fact]
    public void And_is_never_steep() => Assert.False(new FinishLobe(PolynomialLaw.Solve(new LobeSpec(.5, 220, 270, .006)), Follower.Flat).IsSteep(.3));
}
