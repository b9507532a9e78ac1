using CsCheck;

namespace GrindShop.Lobes.Tests;

public class BandPropertyTests
{
    private const int Cases = 25;

    private static readonly Gen<(double At050, double Lift, double Turn, double Stock)> Lobes =
        from at050 in Gen.Double[205, 250]
        from lift in Gen.Double[0.28, 0.40]
        from turn in Gen.Double[-6, 6]
        from stock in Gen.Double[0.015, 0.120]
        select (at050, lift, turn, stock);

    [Fact]
    public void Twice_the_size_gives_twice_the_answer() => Lobes.Sample(
        c =>
        {
            var law = Everyday.Lobe(c.At050, c.Lift);
            var doubled = new PolynomialLaw(2 * law.LobeLiftIn, law.HalfAngleRad, law.ExponentStep);
            var nominal = new PolynomialLaw(2 * Everyday.Law.LobeLiftIn, Everyday.Law.HalfAngleRad, Everyday.Law.ExponentStep);
            var one = Judge(c.Stock, law, c.Turn);
            var two = MetalBand.Judge(
                BlankOutline.Milled(nominal, Follower.Roller(0.75), 2.5, 2 * c.Stock), new(doubled, Follower.Roller(0.75)), c.Turn, new(0.010));
            Assert.Equal(2 * one.MaxBaseCircleDiameterIn, two.MaxBaseCircleDiameterIn, 1e-6);
            Assert.Equal(2 * one.MaxRemovalIn, two.MaxRemovalIn, 1e-6);
        },
        iter: Cases);

    [Fact]
    public void A_symmetric_pair_does_not_care_which_way_it_is_turned() => Lobes.Sample(
        c =>
        {
            var law = Everyday.Lobe(c.At050, c.Lift);
            BandAnswer one = Judge(c.Stock, law, c.Turn), other = Judge(c.Stock, law, -c.Turn);
            Assert.Equal(one.MaxBaseCircleDiameterIn, other.MaxBaseCircleDiameterIn, 2e-6);
            Assert.Equal(one.MaxRemovalIn, other.MaxRemovalIn, 2e-6);
        },
        iter: Cases);

    [Fact]
    public void More_stock_and_less_lift_leave_a_larger_base_circle() => Lobes.Sample(
        c =>
        {
            var law = Everyday.Lobe(c.At050, c.Lift);
            var answer = Judge(c.Stock, law, c.Turn).MaxBaseCircleDiameterIn;
            Assert.True(Judge(c.Stock + 0.01, law, c.Turn).MaxBaseCircleDiameterIn > answer);
            var higher = new PolynomialLaw(law.LobeLiftIn + 0.01, law.HalfAngleRad, law.ExponentStep);
            Assert.True(Judge(c.Stock, higher, c.Turn).MaxBaseCircleDiameterIn <= answer + 1e-6);
        },
        iter: Cases);

    [Fact]
    public void A_deeper_case_never_loses_a_grind() => Lobes.Sample(
        c =>
        {
            var blank = BlankOutline.Milled(Everyday.Law, Everyday.Roller, Everyday.BaseCircleIn, c.Stock);
            var kept = new[] { 0.05, 0.08, 0.12, 0.25 }
                .Select(depth => MetalBand.Judge(blank, new(Everyday.Lobe(c.At050, c.Lift), Everyday.Roller), c.Turn, new(0.005, depth, 0.03)).CaseKept)
                .ToList();
            Assert.Equal(kept.Order(), kept);
        },
        iter: Cases);

    [Fact]
    public void Nothing_typed_into_the_ranges_throws_or_hangs() =>
        (from lift in Gen.Double[0.06, 1.0]
         from at050 in Gen.Double[120, 330]
         from d in Gen.Double[0.8, 80]
         from half in Gen.Double[0.3, Math.PI]
         from roller in Gen.Double[0.05, 2]
         from flat in Gen.Bool
         from round in Gen.Bool
         from size in Gen.Double[0.1, 3]
         from turn in Gen.Double[-400, 400]
         from stock in Gen.Double[0, 0.6]
         select (lift, d, half, roller, flat, round, size, turn, stock)).Sample(
            c =>
            {
                var follower = c.flat ? Follower.Flat : Follower.Roller(c.roller);
                var law = new PolynomialLaw(c.lift, c.half, c.d);
                var blank = c.round ? BlankOutline.Round(c.size) : BlankOutline.Milled(law, follower, c.size, c.stock);
                var answer = MetalBand.Judge(blank, new(law, Everyday.Roller), c.turn, new(0.005, 0.1));
                Assert.True(double.IsFinite(answer.MaxBaseCircleDiameterIn) && double.IsFinite(answer.MaxRemovalIn));
                Assert.True(answer.MaxRemovalIn >= answer.MinRemovalIn - 1e-9);
            },
            iter: 40);

    private static BandAnswer Judge(double stock, LiftLaw law, double turn) => MetalBand.Judge(
        BlankOutline.Milled(Everyday.Law, Everyday.Roller, Everyday.BaseCircleIn, stock), new(law, Everyday.Roller), turn, new(0.005));
}
