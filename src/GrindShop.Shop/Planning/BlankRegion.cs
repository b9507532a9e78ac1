using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;

namespace GrindShop.Shop.Planning;

/// <summary>One duration on the map and how far the lobe separation may move from the blank's own there, cam degrees.</summary>
public readonly record struct RegionStep(double DurationAt050CrankDeg, double SeparationReachCamDeg);

/// <summary>
/// What can be ground from a blank, in the plane of intake duration at .050 and lobe separation: at the blank's own lifts and follower, the exhaust longer or
/// shorter by as much as the intake, the centrelines where they fit, and no more than a given base circle given up against its nominal grind.
/// </summary>
/// <param name="Blank">The blank; it has a nominal grind.</param>
/// <param name="Steps">From the shortest duration to the longest; empty where the blank's own grind asks for more base circle than may be given up.</param>
public sealed record BlankRegion(PreparedBlank Blank, IReadOnlyList<RegionStep> Steps)
{
    private const double WidestCrankDeg = 40, StepCrankDeg = 4, WidestTurnCamDeg = 15, ToleranceCamDeg = .02;

    public NominalGrind Nominal => Blank.Part.Nominal!;

    /// <summary>Does the region hold a duration and a separation? Between two steps the lesser reach counts.</summary>
    public bool Holds(double durationAt050CrankDeg, double separationCamDeg)
    {
        var at = Steps.Where(step => Math.Abs(step.DurationAt050CrankDeg - durationAt050CrankDeg) < StepCrankDeg).ToList();
        return at.Count > 0 && Steps[0].DurationAt050CrankDeg <= durationAt050CrankDeg && durationAt050CrankDeg <= Steps[^1].DurationAt050CrankDeg
            && Math.Abs(separationCamDeg - Nominal.LobeSeparationCamDeg) <= at.Min(step => step.SeparationReachCamDeg);
    }

    /// <param name="blank">A blank with a nominal grind.</param>
    /// <param name="family">Its family.</param>
    /// <param name="rules">The shop's limits.</param>
    /// <param name="mostGivenUpIn">How far the base circle may end below the nominal one, in.</param>
    /// <param name="cancel">Ends the work.</param>
    public static BlankRegion Of(PreparedBlank blank, EngineFamily family, ShopRules rules, double mostGivenUpIn, CancellationToken cancel = default)
    {
        var nominal = blank.Part.Nominal ?? throw new ArgumentException("A full-round blank has no region of its own.", nameof(blank));
        var room = family.BoreLimitIn(Math.Max(nominal.Intake.LobeLiftIn, nominal.Exhaust.LobeLiftIn));
        var least = Math.Max(Math.Max(blank.Part.LeastBaseCircleIn, family.LeastBaseCircleIn), Math.Min(nominal.BaseCircleDiameterIn, room ?? double.PositiveInfinity) - mostGivenUpIn);
        double? Reach(LobeSpec lobe, BlankOutline outline, double longer)
        {
            cancel.ThrowIfCancellationRequested();
            var wished = lobe with { DurationAt050CrankDeg = lobe.DurationAt050CrankDeg + longer, AdvertisedDurationCrankDeg = lobe.AdvertisedDurationCrankDeg + longer };
            return room < least || !PolynomialLaw.TrySolve(wished, out var law, out _) ? null
                : Turn(new BandJudge(new FinishLobe(law, nominal.Follower), rules.Limits(blank), null, room), outline, least);
        }
        RegionStep? At(double longer) => Reach(nominal.Intake, blank.Intake, longer) is { } intake && Reach(nominal.Exhaust, blank.Exhaust, longer) is { } exhaust
            ? new RegionStep(nominal.Intake.DurationAt050CrankDeg + longer, intake + exhaust)
            : null;
        return At(0) is { } middle
            ? new BlankRegion(blank, [.. Outwards(At, -StepCrankDeg).Reverse(), middle, .. Outwards(At, StepCrankDeg)])
            : new BlankRegion(blank, []);
    }

    /// <summary>Away from the blank's own durations until the metal ends.</summary>
    private static IEnumerable<RegionStep> Outwards(Func<double, RegionStep?> at, double stepCrankDeg)
    {
        for (var longer = stepCrankDeg; Math.Abs(longer) <= WidestCrankDeg && at(longer) is { } step; longer += stepCrankDeg)
            yield return step;
    }

    /// <summary>The furthest turn with metal for the lobe: it grows scarcer with the turn, alike on both sides.</summary>
    private static double? Turn(BandJudge judge, BlankOutline blank, double leastIn)
    {
        bool Takes(double turnCamDeg) => judge.Judge(blank, turnCamDeg) is { Fits: true } answer && answer.BaseCircleDiameterIn >= leastIn;
        if (!Takes(0))
            return null;
        double fits = 0, fails = WidestTurnCamDeg;
        if (Takes(fails))
            return fails;
        while (fails - fits > ToleranceCamDeg)
            (fits, fails) = Takes((fits + fails) / 2) ? ((fits + fails) / 2, fails) : (fits, (fits + fails) / 2);
        return fits;
    }
}
