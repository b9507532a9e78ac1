using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>Lobe separations and centrelines around a wish in half degrees, nearest first; either may also stay as the wish has it.</summary>
internal sealed class PhaseSteps
{
    private const double StepDeg = .5, MostSeparationCamDeg = 20, MostCenterlineCrankDeg = 30;
    private const double EarliestExhaustCrankDeg = 50, LatestExhaustCrankDeg = 170;
    private readonly (double Separation, double Centerline)[] _nearestFirst;

    public PhaseSteps(GrindSpec wish) => _nearestFirst =
    [
        .. from separation in Around(wish.LobeSeparationCamDeg, MostSeparationCamDeg, FieldRange.LobeSeparation)
           from centerline in Around(wish.IntakeCenterlineCrankDeg, MostCenterlineCrankDeg, FieldRange.IntakeCenterline)
           where 2 * separation - centerline is >= EarliestExhaustCrankDeg and <= LatestExhaustCrankDeg
           orderby GrindDistance.Phase(separation - wish.LobeSeparationCamDeg, centerline - wish.IntakeCenterlineCrankDeg), separation, centerline
           select (separation, centerline),
    ];

    /// <summary>The grind at the nearest timing that the blank has metal for; null where there is none in reach.</summary>
    public GrindSpec? Nearest(BlankTrial blank, GrindSpec grind)
    {
        if (blank.Reach(grind) is not { } reach)
            return null;
        foreach (var (separation, centerline) in _nearestFirst)
        {
            var moved = grind with { LobeSeparationCamDeg = separation, IntakeCenterlineCrankDeg = centerline };
            var turns = Turns.Of(moved, blank.Stocked.Blank.Part.Nominal);
            if (Math.Abs(turns.IntakeCamDeg) <= reach.IntakeCamDeg && Math.Abs(turns.ExhaustCamDeg) <= reach.ExhaustCamDeg)
                return moved;
        }
        return null;
    }

    private static IEnumerable<double> Around(double wish, double most, FieldRange range)
    {
        var first = Math.Ceiling((wish - most) / StepDeg) * StepDeg;
        for (var value = first; value <= wish + most; value += StepDeg)
            if (value != wish && range.Check(value, "") is null)
                yield return value;
        yield return wish;
    }
}
