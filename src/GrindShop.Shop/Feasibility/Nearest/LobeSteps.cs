using System.Collections.Immutable;
using GrindShop.Lobes;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>
/// A change of both lobes in the steps that a shop writes: a thousandth of lift, a crank degree of duration. Figures in the order in which they are
/// given back: intake lift, exhaust lift, intake duration, exhaust duration.
/// </summary>
internal sealed record LobeSteps(ImmutableArray<int> Figures)
{
    public const int MostLift = 150, MostDuration = 40;

    public static LobeSteps Lift(int steps) => new([steps, steps, 0, 0]);

    public static LobeSteps Duration(int steps) => new([0, 0, steps, steps]);

    public LobeSteps With(int figure, int steps) => new(Figures.SetItem(figure, steps));

    /// <summary>The wish with its lobes changed, at the wish's own timing; null where no lobe of these figures can be drawn.</summary>
    public GrindSpec? Of(GrindSpec wish) =>
        Lobe(wish.Intake, Figures[0], Figures[2]) is { } intake && Lobe(wish.Exhaust, Figures[1], Figures[3]) is { } exhaust
            ? wish with { Intake = intake, Exhaust = exhaust }
            : null;

    /// <summary>Every figure as near to the wish as it holds, one after another; the steps given must hold.</summary>
    public LobeSteps GiveBack(Func<LobeSteps, bool> holds)
    {
        var steps = this;
        for (var figure = 0; figure < Figures.Length; figure++)
            steps = steps.With(figure, Least(steps, figure, holds));
        return steps;
    }

    private static int Least(LobeSteps steps, int figure, Func<LobeSteps, bool> holds)
    {
        var sign = Math.Sign(steps.Figures[figure]);
        if (sign == 0 || holds(steps.With(figure, 0)))
            return 0;
        return sign * LeastStep.Between(0, Math.Abs(steps.Figures[figure]), size => holds(steps.With(figure, sign * size)));
    }

    private static LobeSpec? Lobe(LobeSpec wish, int lift, int duration)
    {
        if (lift == 0 && duration == 0)
            return wish;
        var at050 = Moved(wish.DurationAt050CrankDeg, duration);
        var ramps = wish.AdvertisedDurationCrankDeg - wish.DurationAt050CrankDeg;
        var advertised = duration == 0 ? wish.AdvertisedDurationCrankDeg : Math.Round(at050 + ramps);
        return Drawn(new LobeSpec(Moved(wish.LobeLiftIn * 1000, lift) / 1000, at050, advertised, wish.AdvertisedAtIn));
    }

    /// <summary>The whole number so many steps off, on the wish's side; the wish itself where nothing moves.</summary>
    private static double Moved(double wish, int steps) =>
        steps == 0 ? wish : steps < 0 ? Math.Ceiling(wish + steps - 1e-6) : Math.Floor(wish + steps + 1e-6);

    /// <summary>The lobe, with the nearest advertised duration that the lift law reaches.</summary>
    private static LobeSpec? Drawn(LobeSpec lobe)
    {
        if (!InRange(lobe))
            return null;
        if (PolynomialLaw.TrySolve(lobe, out _, out var error))
            return lobe;
        if (error is not { ReachableAdvertisedMinCrankDeg: { } least, ReachableAdvertisedMaxCrankDeg: { } most } || Math.Ceiling(least) > Math.Floor(most))
            return null;
        var reached = lobe with { AdvertisedDurationCrankDeg = Math.Clamp(lobe.AdvertisedDurationCrankDeg, Math.Ceiling(least), Math.Floor(most)) };
        return InRange(reached) && PolynomialLaw.TrySolve(reached, out _, out _) ? reached : null;
    }

    private static bool InRange(LobeSpec lobe) =>
        FieldRange.LobeLift.Check(lobe.LobeLiftIn, "") is null
            && FieldRange.DurationAt050.Check(lobe.DurationAt050CrankDeg, "") is null
            && FieldRange.Advertised.Check(lobe.AdvertisedDurationCrankDeg, "") is null;
}
