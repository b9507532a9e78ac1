using CsCheck;
using GrindShop.Shop.Allocating;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Orders;

namespace GrindShop.Shop.Tests.Allocating;

public sealed class BlankRankingTests
{
    private static readonly DateOnly Soon = new(2026, 4, 1);

    private static BlankFit Good => SomeOrders.Answer.Best! with { NeedsHeatTreat = false, Gear = new GearAdvice(GearVerdict.Ok, "Runs."), LeastCaseLeftIn = .200, MaxRemovalIn = .030 };

    private static readonly Gen<BlankOption> Options =
        from fits in Gen.Bool
        from gear in Gen.Enum<GearVerdict>()
        from soft in Gen.Bool
        from baseIn in Gen.Double[.9, 1.2]
        from left in Gen.Double[.02, .25]
        from off in Gen.Double[.01, .2]
        from available in Gen.Int[0, 2]
        from days in Gen.Int[0, 40]
        from part in Gen.Int[0, 20]
        select Option(part, Good with
        {
            Fits = fits,
            Gear = new GearAdvice(gear, "As the table says."),
            NeedsHeatTreat = soft,
            IntakeBaseCircleDiameterIn = baseIn,
            ExhaustBaseCircleDiameterIn = baseIn,
            LeastCaseLeftIn = left < .05 ? null : left,
            MaxRemovalIn = off,
        }, available, days < 5 ? null : Soon.AddDays(days));

    [Fact]
    public void The_order_does_not_depend_on_the_order_they_came_in() => Options.List[2, 12].Sample(options =>
        BlankRanking.Of(options).Select(Key).SequenceEqual(BlankRanking.Of(Enumerable.Reverse(options)).Select(Key)));

    [Fact]
    public void What_can_be_taken_stands_before_what_cannot_and_every_place_has_its_reason() => Options.List[1, 12].Sample(options =>
    {
        var ranked = BlankRanking.Of(options);
        Assert.Equal(Enumerable.Range(1, options.Count), ranked.Select(blank => blank.Place));
        Assert.Equal(ranked.Select(blank => blank.Option.CanBeTaken).OrderDescending(), ranked.Select(blank => blank.Option.CanBeTaken));
        Assert.Equal(ranked.Select(blank => blank.Option.Fit.Usable).OrderDescending(), ranked.Select(blank => blank.Option.Fit.Usable));
        Assert.All(ranked, blank => Assert.EndsWith(".", blank.Why, StringComparison.Ordinal));
    });

    public static TheoryData<string, Func<BlankOption, BlankOption>> Worse => new()
    {
        { "none is free now; more are expected on Apr 1, 2026", option => Change(option, fit => fit with { Free = [] }) with { NextReceipt = Soon } },
        { "it is soft and has to go to the heat treater", option => Change(option, fit => fit with { NeedsHeatTreat = true }) },
        { "its gear needs care: look at it", option => Change(option, fit => fit with { Gear = new GearAdvice(GearVerdict.Caution, "Look at it.") }) },
        { "its base circle is 0.050 in smaller", option => Change(option, fit => fit with { IntakeBaseCircleDiameterIn = fit.IntakeBaseCircleDiameterIn - .05, ExhaustBaseCircleDiameterIn = fit.IntakeBaseCircleDiameterIn - .05 }) },
        { "less case is left, 0.100 in", option => Change(option, fit => fit with { LeastCaseLeftIn = .100 }) },
        { "0.040 in more has to come off", option => Change(option, fit => fit with { MaxRemovalIn = .070 }) },
    };

    [Theory]
    [MemberData(nameof(Worse))]
    public void The_first_thing_in_which_it_stands_behind_is_named(string because, Func<BlankOption, BlankOption> worsen)
    {
        var fit = Good with { ExhaustBaseCircleDiameterIn = Good.IntakeBaseCircleDiameterIn };
        var (better, worse) = (Option(0, fit, 3, null), worsen(Option(1, fit, 3, null)));

        var ranked = BlankRanking.Of([worse, better]);

        Assert.Equal([better, worse], ranked.Select(blank => blank.Option));
        Assert.Equal($"Behind {better.Part.PartNumber}: {because}.", ranked[1].Why);
    }

    [Fact]
    public void What_does_not_fit_says_what_stands_against_it()
    {
        var wrong = SomeOrders.Answer.Blanks.First(fit => !fit.Fits);
        var ranked = BlankRanking.Of([Option(1, wrong, 3, null), Option(0, Good, 1, null)]);
        Assert.StartsWith("Out: does not fit without a change: ", ranked[1].Why, StringComparison.Ordinal);
        Assert.StartsWith("Nothing can be used as it is", Assert.Single(BlankRanking.Of([Option(1, wrong, 3, null)])).Why, StringComparison.Ordinal);
    }

    private static BlankOption Option(int part, BlankFit fit, int available, DateOnly? on) =>
        new(fit with { Free = fit.Usable && available > 0 ? [new FreeMetal(LotMetal.Nominal(Shelf.Blanks[part].Part), available, .030)] : [] }, Shelf.Blanks[part].Part, on);

    private static BlankOption Change(BlankOption option, Func<BlankFit, BlankFit> change) => option with { Fit = change(option.Fit) };

    private static (string, bool, int, double) Key(RankedBlank blank) => (blank.Option.Part.PartNumber, blank.Option.CanBeTaken, blank.Place, Math.Round(blank.Option.BaseCircleIn / .01));
}
