using System.Globalization;

namespace GrindShop.Lobes;

/// <summary>A microhardness reading on a cut through the case.</summary>
public readonly record struct CaseReading(double DepthIn, double HardnessHv);

/// <summary>Why a traverse gives no effective depth; <see cref="object.ToString"/> says it in words.</summary>
public abstract record CaseProblem
{
    private CaseProblem()
    {
    }

    public sealed record TooFewReadings : CaseProblem
    {
        public override string ToString() => "A traverse takes at least two readings.";
    }

    public sealed record DepthsNotRising(double DepthIn) : CaseProblem
    {
        public override string ToString() =>
            string.Create(CultureInfo.InvariantCulture, $"The depths must rise; {DepthIn:0.####} in does not.");
    }

    /// <summary>The first reading is already softer than the limit: there is no case by this criterion.</summary>
    public sealed record SoftFromTheStart(double HardnessHv, double LimitHv) : CaseProblem
    {
        public override string ToString() => string.Create(
            CultureInfo.InvariantCulture, $"The first reading, {HardnessHv:0} HV, is already below {LimitHv:0} HV.");
    }

    /// <summary>The last reading is still at least as hard as the limit: the case is deeper than the traverse went.</summary>
    public sealed record DeeperThanMeasured(double DepthIn, double LimitHv) : CaseProblem
    {
        public override string ToString() => string.Create(
            CultureInfo.InvariantCulture, $"Still {LimitHv:0} HV or harder at {DepthIn:0.####} in: measure deeper.");
    }
}

/// <summary>Effective case depth from a microhardness traverse.</summary>
public static class EffectiveCase
{
    /// <summary>Depth, in, at which the hardness first falls below the limit, on a straight line between neighbouring readings.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A depth outside 0-2 in or a hardness outside 50-1500 HV.</exception>
    public static Outcome<double, CaseProblem> Depth(IReadOnlyList<CaseReading> readings, CaseLimit limit)
    {
        var limitHv = Hardness.Convert(limit.Limit.Value, limit.Limit.Scale, HardnessScale.Hv).Required().Value;
        if (Problem(readings, limitHv) is { } problem)
            return problem;
        var inside = readings.Zip(readings.Skip(1)).First(pair => pair.Second.HardnessHv < limitHv);
        return Crossing(inside.First, inside.Second, limitHv);
    }

    private static CaseProblem? Problem(IReadOnlyList<CaseReading> readings, double limitHv)
    {
        foreach (var reading in readings)
            Check(reading);
        if (readings.Count < 2)
            return new CaseProblem.TooFewReadings();
        foreach (var (first, second) in readings.Zip(readings.Skip(1)))
            if (second.DepthIn <= first.DepthIn)
                return new CaseProblem.DepthsNotRising(second.DepthIn);
        if (readings[0].HardnessHv < limitHv)
            return new CaseProblem.SoftFromTheStart(readings[0].HardnessHv, limitHv);
        return readings.All(reading => reading.HardnessHv >= limitHv)
            ? new CaseProblem.DeeperThanMeasured(readings[^1].DepthIn, limitHv)
            : null;
    }

    private static void Check(CaseReading reading)
    {
        Require.Within(reading.DepthIn, 0, 2);
        Require.Within(reading.HardnessHv, 50, 1_500);
    }

    private static double Crossing(CaseReading hard, CaseReading soft, double limitHv) =>
        hard.DepthIn + (soft.DepthIn - hard.DepthIn) * (hard.HardnessHv - limitHv) / (hard.HardnessHv - soft.HardnessHv);
}
