using System.Text.Json;
using CsCheck;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Specs;

namespace GrindShop.Shop.Tests.Feasibility;

public class VerdictTests
{
    private static readonly GrindSpec Street = Wishes.Grind(Wishes.Street);

    [Fact]
    public void In_stock_and_usable_is_from_stock()
    {
        var answer = Shelf.Judge(Street);

        Assert.Equal(Verdict.FromStock, answer.Verdict);
        Assert.Contains(answer.Best!.PartNumber, answer.Reasons[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Usable_but_not_in_stock_is_a_special_order_with_its_days()
    {
        var answer = Shelf.Judge(Street, _ => 0);

        Assert.Equal(Verdict.SpecialOrder, answer.Verdict);
        Assert.Contains($"{answer.Best!.LeadTimeDays} days", answer.Reasons[0], StringComparison.Ordinal);
        Assert.Equal(Shelf.Blank(answer.Best.PartNumber).Part.LeadTimeDays, answer.Best.LeadTimeDays);
    }

    [Fact]
    public void Stock_of_a_blank_that_does_not_fit_helps_nobody()
    {
        var fits = Shelf.Judge(Street).Blanks.Where(fit => fit.Fits).Select(fit => fit.PartNumber).ToHashSet();

        Assert.Equal(Verdict.SpecialOrder, Shelf.Judge(Street, part => fits.Contains(part.PartNumber) ? 0 : 5).Verdict);
    }

    [Fact]
    public void Nothing_usable_is_not_grindable_and_the_nearest_blank_says_why()
    {
        var answer = Shelf.Judge(Shelf.Longer(Street, 110) with { MaxBaseCircleDiameterIn = .8 });

        Assert.Equal((Verdict.NotGrindable, null), (answer.Verdict, answer.Best));
        Assert.Contains(answer.Blanks[0].Reasons[0], answer.Reasons[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Gear_that_forbids_makes_no_usable_blank_though_the_metal_is_there()
    {
        var steel = Shelf.Blanks.First(blank => blank.Part is { EngineFamily.Code: "RV8-R", Gear: CamGear.Steel, Nominal: not null });
        var grind = Shelf.Nominal(steel) with { DistributorGear = DistributorGear.Iron };

        var answer = FeasibilityJudge.Judge(grind, steel.Part.EngineFamily, [new StockedBlank(steel, 9)], Shelf.Rules);

        Assert.Equal(Verdict.NotGrindable, answer.Verdict);
        Assert.True(answer.Blanks[0] is { Fits: true, Usable: false, Gear.Verdict: GearVerdict.No });
        Assert.Contains("not with this distributor gear", answer.Reasons[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Family_without_blanks_says_so() =>
        Assert.Contains("no blank for this engine family", FeasibilityJudge.Judge(Street, Wishes.MainFamily, [], Shelf.Rules).Reasons.Single(), StringComparison.Ordinal);

    [Fact]
    public void Nose_that_no_bore_lets_through_is_an_answer_and_no_crash()
    {
        var slim = JsonSerializer.SerializeToNode(Wishes.Family("KV2-N"), ShopJson.Options)!;
        slim["nosePassesBores"] = true;
        var family = slim.Deserialize<EngineFamily>(ShopJson.Options)!;
        var grind = SpecCompletion.Complete(Wishes.Street with { EngineFamily = family.Code, Intake = new LobeWish { LobeLiftIn = .6, DurationAt050CrankDeg = 260 } }, family).Grind!;

        var answer = FeasibilityJudge.Judge(grind, family, Shelf.Blanks.Where(blank => blank.Part.EngineFamily.Code == family.Code).Select(blank => new StockedBlank(blank, 1)), Shelf.Rules);

        Assert.Equal(Verdict.NotGrindable, answer.Verdict);
    }

    [Fact]
    public void Whatever_completes_is_judged_and_the_best_comes_first() => RandomSpecs.Likely.Sample(
        spec =>
        {
            if (Wishes.Completed(spec).Grind is not { } grind)
                return;
            var answer = Shelf.Judge(grind, part => part.LeadTimeDays % 3);
            Assert.Equal(Shelf.Of(Shelf.Family(grind)).Count(), answer.Blanks.Count);
            Assert.Equal(answer.Verdict == Verdict.NotGrindable, answer.Best is null);
            Assert.All(answer.Blanks, fit => Assert.NotEmpty(fit.Reasons));
            foreach (var (better, worse) in answer.Blanks.Zip(answer.Blanks.Skip(1)))
                Assert.True(Rank(better) <= Rank(worse), $"{better.PartNumber} before {worse.PartNumber}");
        },
        iter: 150);

    /// <summary>Usable, fitting, in stock, hardened, gear without doubt: each outweighs all that follow.</summary>
    private static int Rank(BlankFit fit) =>
        (fit.Usable ? 0 : 16) + (fit.Fits ? 0 : 8) + (fit.InStock ? 0 : 4) + (fit.NeedsHeatTreat ? 2 : 0) + (fit.Gear.Verdict == GearVerdict.Caution ? 1 : 0);
}
