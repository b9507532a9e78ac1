using CsCheck;

namespace GrindShop.Lobes.Tests;

/// <summary>The quick judge against the plain point-by-point one.</summary>
public class BandJudgeTests
{
    private const double AllowedIn = 0.0002;

    private static readonly Gen<(double At050, double Lift, double Advertised, double Base, double Stock, Follower Follower)> Blanks =
        from at050 in Gen.Double[200, 260]
        from lift in Gen.Double[0.24, 0.42]
        from extra in Gen.Double[0.03, 0.8]
        from baseCircle in Gen.Double[1.0, 1.5]
        from stock in Gen.Double[0.010, 0.150]
        from flat in Gen.Bool
        select (at050, lift, extra, baseCircle, stock, flat ? Follower.Flat : Everyday.Roller);

    [Fact]
    public void Agrees_with_the_plain_judge() =>
        (from blank in Blanks from finish in Blanks from turn in Gen.Double[-8, 8] from given in Gen.Bool select (blank, finish, turn, given)).Sample(
            c =>
            {
                if (Law(c.blank) is not { } nominal || Law(c.finish) is not { } wanted)
                    return;
                if (LobeContour.Of(nominal, c.blank.Follower, c.blank.Base).IsUndercut)
                    return;
                var outline = BlankOutline.Milled(nominal, c.blank.Follower, c.blank.Base, c.blank.Stock);
                var finish = new FinishLobe(wanted, c.blank.Follower);
                if (c.finish.Base < finish.LeastBaseCircleDiameterIn)
                    return;
                AssertSame(outline, finish, c.turn, new(0.005, 0.08, 0.03), c.given ? c.finish.Base : null);
            },
            iter: 300);

    [Theory]
    [InlineData(0.5)]
    [InlineData(1.4)]
    [InlineData(2.2)]
    public void Agrees_on_rounds(double diameter) =>
        AssertSame(BlankOutline.Round(diameter), Everyday.Finish, 33, new(0.010), null);

    [Fact]
    public void Agrees_on_followers_of_another_kind_and_on_abrupt_laws()
    {
        var abrupt = new FinishLobe(new PolynomialLaw(0.3, 1.2, 60), Everyday.Roller);

        AssertSame(Everyday.Blank, new(Everyday.Lobe(230, 0.25), Follower.Flat), 1, new(0.005), null);
        AssertSame(Everyday.Blank, new(Everyday.Lobe(215), Follower.Roller(0.5)), 1, new(0.005), null);
        AssertSame(Everyday.Blank, abrupt, 1, new(0.005), null);
    }

    [Fact]
    public void Agrees_on_an_asymmetric_table()
    {
        var table = TableLaw.Of(
            Enumerable.Range(-180, 360).Select(d => new TablePoint(d, (d < 0 ? Everyday.Lobe(218) : Everyday.Lobe(226)).At(Everyday.Rad(d)).LiftIn)), 0);

        AssertSame(Everyday.Blank, new(table, Everyday.Roller), 1.3, new(0.005), null);
        AssertSame(Everyday.Blank, new(table, Everyday.Roller), -1.3, new(0.005), 1.22);
    }

    [Fact]
    public void Many_at_once_are_the_same_as_one_by_one_and_allocate_nothing()
    {
        var judge = new BandJudge(Everyday.Finish, new(0.005, 0.25, 0.06));
        TurnedBlank[] blanks = [.. Enumerable.Range(0, 200).Select(i => new TurnedBlank(Everyday.Blank, i / 40.0 - 2.5))];
        var answers = new BandAnswer[blanks.Length];
        judge.JudgeMany(blanks, answers);

        var before = GC.GetAllocatedBytesForCurrentThread();
        judge.JudgeMany(blanks, answers);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        Assert.Equal(judge.Judge(Everyday.Blank, 0.5), answers[120]);
    }

    [Fact]
    public void Nonsense_is_refused_by_name()
    {
        Assert.Throws<ArgumentOutOfRangeException>("baseCircleDiameterIn", () => new BandJudge(Everyday.Finish, new(0.005), double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>("CleanupIn", () => new BandJudge(Everyday.Finish, new(double.NaN)));
        Assert.Throws<ArgumentOutOfRangeException>("turnCamDeg", () => new BandJudge(Everyday.Finish, new(0.005)).Judge(Everyday.Blank, double.NaN));
    }

    private static PolynomialLaw? Law((double At050, double Lift, double Share, double Base, double Stock, Follower Follower) lobe)
    {
        PolynomialLaw.TrySolve(new(lobe.Lift, lobe.At050, 699, 0.006), out _, out var error);
        var (least, most) = (error!.ReachableAdvertisedMinCrankDeg!.Value, error.ReachableAdvertisedMaxCrankDeg!.Value);
        return PolynomialLaw.TrySolve(new(lobe.Lift, lobe.At050, least + lobe.Share * (most - least), 0.006), out var law, out _) ? law : null;
    }

    private static void AssertSame(BlankOutline blank, FinishLobe finish, double turn, BandLimits limits, double? baseCircle)
    {
        var plain = MetalBand.Judge(blank, finish, turn, limits, baseCircle);
        var quick = new BandJudge(finish, limits, baseCircle).Judge(blank, turn);

        Assert.Equal(plain.MaxBaseCircleDiameterIn, quick.MaxBaseCircleDiameterIn, 2 * AllowedIn);
        Assert.Equal(plain.BaseCircleDiameterIn, quick.BaseCircleDiameterIn, 2 * AllowedIn);
        Assert.Equal(plain.MinRemovalIn, quick.MinRemovalIn, Allowed(plain.MinRemovalIn));
        Assert.Equal(plain.MaxRemovalIn, quick.MaxRemovalIn, Allowed(plain.MaxRemovalIn));
    }

    /// <summary>Far from the surface, where nothing is ground any more, to half a percent of the distance (docs/mathematics.md, "The quick judge").</summary>
    private static double Allowed(double distanceIn) => Math.Max(AllowedIn, 0.005 * Math.Abs(distanceIn));
}
