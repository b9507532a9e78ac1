using GrindShop.Shop.Blanks;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>A grind that a blank takes, before it is judged in full and put into words.</summary>
internal sealed record NearCandidate(GrindSpec Grind, StockedBlank Blank, double Cost);

/// <summary>Seeks the grinds nearest to a wish on one blank, one kind of change after the other.</summary>
internal sealed class GrindSearch(GrindSpec wish, PhaseSteps phases)
{
    private const int Sixteenths = 16;

    /// <summary>Another timing; else durations alone; lift alone.</summary>
    public IEnumerable<NearCandidate> OneChange(BlankTrial blank) => Only(blank, phases.Nearest(blank, wish), Durations(blank, -1), Durations(blank, 1), Lifts(blank));

    /// <summary>
    /// From the wish towards the blank's own lobes and timing until it comes out; then back again as far as the metal allows: lift first, then durations,
    /// the timing last, so that the timing is what gives most.
    /// </summary>
    public IEnumerable<NearCandidate> AllTogether(BlankTrial blank)
    {
        if (blank.Stocked.Blank.Part.Nominal is not { } nominal)
            return [];
        bool Takes(LobeSteps steps) => blank.Takes(InLine(steps.Of(wish), nominal));
        var target = Towards(nominal);
        if (LeastStep.Of(Sixteenths, step => Takes(Part(target, step))) is not { } part)
            return [];
        return Only(blank, phases.Nearest(blank, Part(target, part).GiveBack(Takes).Of(wish)!));
    }

    private GrindSpec? Durations(BlankTrial blank, int sign) => Least(blank, LobeSteps.MostDuration, size => LobeSteps.Duration(sign * size));

    private GrindSpec? Lifts(BlankTrial blank) => Least(blank, LobeSteps.MostLift, size => LobeSteps.Lift(-size));

    /// <summary>Both lobes together until the blank takes them, then each of them back by itself.</summary>
    private GrindSpec? Least(BlankTrial blank, int most, Func<int, LobeSteps> steps)
    {
        bool Takes(LobeSteps tried) => blank.Takes(tried.Of(wish));
        return LeastStep.Of(most, size => Takes(steps(size))) is { } least ? steps(least).GiveBack(Takes).Of(wish) : null;
    }

    private LobeSteps Towards(NominalGrind nominal) => new(
    [
        Math.Min(0, Whole(1000 * (nominal.Intake.LobeLiftIn - wish.Intake.LobeLiftIn))),
        Math.Min(0, Whole(1000 * (nominal.Exhaust.LobeLiftIn - wish.Exhaust.LobeLiftIn))),
        Whole(nominal.Intake.DurationAt050CrankDeg - wish.Intake.DurationAt050CrankDeg),
        Whole(nominal.Exhaust.DurationAt050CrankDeg - wish.Exhaust.DurationAt050CrankDeg),
    ]);

    private static LobeSteps Part(LobeSteps target, int sixteenths) => new([.. target.Figures.Select(steps => Whole(steps * sixteenths / (double)Sixteenths))]);

    private static GrindSpec? InLine(GrindSpec? grind, NominalGrind nominal) => grind is null ? null : grind with
    {
        LobeSeparationCamDeg = nominal.LobeSeparationCamDeg,
        IntakeCenterlineCrankDeg = nominal.IntakeCenterlineCrankDeg,
    };

    private static int Whole(double steps) => (int)Math.Round(steps);

    private IEnumerable<NearCandidate> Only(BlankTrial blank, params GrindSpec?[] grinds) =>
        grinds.OfType<GrindSpec>().Select(grind => new NearCandidate(grind, blank.Stocked, GrindDistance.Cost(wish, grind, blank.InStock)));
}
