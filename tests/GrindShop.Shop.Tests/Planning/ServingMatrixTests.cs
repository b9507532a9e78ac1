using CsCheck;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Planning;
using GrindShop.Shop.Specs;
using TestShelf = GrindShop.Shop.Tests.Feasibility.Shelf;

namespace GrindShop.Shop.Tests.Planning;

public class ServingMatrixTests
{
    private static readonly ServingWeights Weights = new();
    private static readonly IReadOnlyList<PreparedBlank> Blanks = [.. TestShelf.Blanks.Where(blank => blank.Part.EngineFamily.Code == "RV8-R")];
    private static readonly IReadOnlyList<PreparedBlank> Milled = [.. Blanks.Where(blank => blank.Part.Nominal is not null)];
    private static readonly ServingMatrix Usual = Matrix(Weights), Strict = Matrix(Weights with { MostCenterlineCrankDeg = 0, MostDurationCrankDeg = 0 });

    [Fact]
    public void Without_changes_it_agrees_with_the_judge_of_one_specification() => Near(6, 12).Sample(grind =>
    {
        foreach (var blank in Blanks)
        {
            var (fit, serving) = (TestShelf.Fit(grind, blank), Strict.One(grind, blank));
            Assert.Equal(fit.Usable, serving.Kind == ServingKind.AsIs);
            if (fit.Usable)
                Assert.Equal((fit.IntakeBaseCircleDiameterIn, fit.ExhaustBaseCircleDiameterIn), (serving.Intake.BaseCircleDiameterIn, serving.Exhaust.BaseCircleDiameterIn));
        }
    }, iter: 25);

    [Fact]
    public void A_change_is_one_that_the_judge_accepts_and_it_stays_within_its_limits() => Near(12, 10).Sample(grind =>
    {
        foreach (var blank in Milled)
            if (Usual.One(grind, blank) is { Kind: ServingKind.Changed } serving)
            {
                Assert.True(TestShelf.Fit(Changed(grind, serving), blank).Usable);
                Assert.InRange(Math.Abs(serving.Intake.CenterlineCrankDeg), 0, Weights.MostCenterlineCrankDeg);
                Assert.InRange(Math.Abs(serving.Exhaust.CenterlineCrankDeg), 0, Weights.MostCenterlineCrankDeg);
                Assert.True(Math.Abs(serving.Intake.DurationCrankDeg) is 0 or 2);
                Assert.True(serving.Dollars >= Weights.AnyChange);
            }
    }, iter: 25);

    [Fact]
    public void The_table_holds_what_one_pair_costs_in_cents()
    {
        GrindSpec[] specs = [.. Milled.Take(4).Select(TestShelf.Nominal)];
        var matrix = Matrix(Weights);
        var problem = matrix.Of(specs, [1, 2, 3, 4], Blanks);

        for (var demand = 0; demand < specs.Length; demand++)
            for (var site = 0; site < Blanks.Count; site++)
                Assert.Equal(matrix.One(specs[demand], Blanks[site]) is { Kind: not ServingKind.Impossible } one ? (int)Math.Round(100 * one.Dollars) : ServingProblem.Impossible, problem[demand, site]);
        Assert.All(problem.Unserved, cents => Assert.Equal(25_000, cents));
    }

    [Fact]
    public void Every_part_of_the_cost_counts_by_its_weight()
    {
        var blank = Milled.First(one => one.Part.CaseDepthIn is not null);
        var grind = TestShelf.Nominal(blank);
        var (free, full) = (new ServingWeights { GrindingHour = 0, BaseCircleThousandth = 0, CaseThousandth = 0 }, Weights);
        var serving = Matrix(full).One(grind, blank);

        Assert.Equal(0, Matrix(free).One(grind, blank).Dollars);
        Assert.Equal(
            serving.GrindingMinutes / 60 * full.GrindingHour + 1000 * (serving.BaseCircleGivenUpIn * full.BaseCircleThousandth + serving.CaseGivenUpIn * full.CaseThousandth),
            serving.Dollars, 9);
    }

    [Fact]
    public void Work_ends_when_it_is_cancelled() => Assert.ThrowsAny<OperationCanceledException>(
        () => Matrix(Weights).Of([TestShelf.Nominal(Milled[0])], [1], Blanks, cancel: new CancellationToken(true)));

    [Fact]
    public void Weights_out_of_their_range_are_named() =>
        Assert.Equal(["lostCam", "heatTreat"], new ServingWeights { LostCam = 0, HeatTreat = double.NaN }.Problems().Select(problem => problem.Field));

    private static ServingMatrix Matrix(ServingWeights weights) => new(Blanks[0].Part.EngineFamily, TestShelf.Rules, weights);

    private static GrindSpec Changed(GrindSpec grind, Serving serving) => grind with
    {
        LobeSeparationCamDeg = grind.LobeSeparationCamDeg + serving.SeparationChangeCamDeg,
        IntakeCenterlineCrankDeg = grind.IntakeCenterlineCrankDeg + serving.Intake.CenterlineCrankDeg,
        Intake = Longer(grind.Intake, serving.Intake.DurationCrankDeg),
        Exhaust = Longer(grind.Exhaust, serving.Exhaust.DurationCrankDeg),
    };

    private static GrindShop.Lobes.LobeSpec Longer(GrindShop.Lobes.LobeSpec lobe, double crankDeg) => lobe with
    {
        DurationAt050CrankDeg = lobe.DurationAt050CrankDeg + crankDeg,
        AdvertisedDurationCrankDeg = lobe.AdvertisedDurationCrankDeg + crankDeg,
    };

    /// <summary>A blank's own grind, its timing and durations moved about.</summary>
    private static Gen<GrindSpec> Near(int separation, int duration) =>
        Gen.Select(Gen.Int[0, Milled.Count - 1], Gen.Int[-separation, separation], Gen.Int[-separation, separation], Gen.Int[-duration, duration]).Select((blank, lsa, icl, longer) =>
        {
            var grind = TestShelf.Nominal(Milled[blank]);
            return grind with
            {
                LobeSeparationCamDeg = grind.LobeSeparationCamDeg + lsa,
                IntakeCenterlineCrankDeg = grind.IntakeCenterlineCrankDeg + icl,
                Intake = Longer(grind.Intake, longer),
                Exhaust = Longer(grind.Exhaust, longer),
            };
        });
}
