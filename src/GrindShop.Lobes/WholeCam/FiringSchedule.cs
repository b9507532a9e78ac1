namespace GrindShop.Lobes;

/// <summary>When each cylinder fires in the 720 crank degrees of a four-stroke; the first of the order at 0.</summary>
public sealed class FiringSchedule
{
    private const double ToleranceCrankDeg = 1e-6;
    private readonly Dictionary<int, double> crankDegOf = [];

    private FiringSchedule(FiringOrder order, IReadOnlyList<double> intervalsCrankDeg)
    {
        (Order, IntervalsCrankDeg) = (order, intervalsCrankDeg);
        var crankDeg = 0.0;
        foreach (var (cylinder, interval) in order.Cylinders.Zip(intervalsCrankDeg))
        {
            crankDegOf[cylinder] = crankDeg;
            crankDeg += interval;
        }
    }

    public FiringOrder Order { get; }

    /// <summary>Crank degrees from each cylinder of the order to the next; the last leads back to the first.</summary>
    public IReadOnlyList<double> IntervalsCrankDeg { get; }

    /// <summary>Every interval is 720 / n.</summary>
    public bool IsEvenFire => IntervalsCrankDeg.All(
        interval => Math.Abs(interval - 720.0 / IntervalsCrankDeg.Count) <= ToleranceCrankDeg);

    /// <summary>Pairs that fire one crank turn apart: their like lobes are 180 cam degrees apart in one bank.</summary>
    public IReadOnlyList<(int First, int Second)> Companions =>
    [
        .. from one in Order.Cylinders
           from other in Order.Cylinders
           where Math.Abs(crankDegOf[other] - crankDegOf[one] - 360) <= ToleranceCrankDeg
           select (one, other),
    ];

    public static FiringSchedule EvenFire(FiringOrder order) =>
        new(order, [.. order.Cylinders.Select(_ => 720.0 / order.Cylinders.Count)]);

    /// <summary>An odd-fire engine: its own interval after each cylinder of the order, 720 crank degrees in all.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An interval is outside 0-720.</exception>
    public static Outcome<FiringSchedule, CamLayoutProblem> OddFire(FiringOrder order, IReadOnlyList<double> intervalsCrankDeg)
    {
        foreach (var interval in intervalsCrankDeg)
            Require.Within(interval, 0, 720, nameof(intervalsCrankDeg));
        if (intervalsCrankDeg.Count != order.Cylinders.Count)
            return new CamLayoutProblem.WrongIntervalCount(intervalsCrankDeg.Count, order.Cylinders.Count);
        var sum = intervalsCrankDeg.Sum();
        if (Math.Abs(sum - 720) > ToleranceCrankDeg)
            return new CamLayoutProblem.IntervalsDoNotClose(sum);
        return new FiringSchedule(order, [.. intervalsCrankDeg]);
    }

    /// <summary>Crank angle at which a cylinder fires, 0 up to 720.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The engine has no such cylinder.</exception>
    public CrankDegrees FiresAt(int cylinder) =>
        CrankDegrees.FromDegrees(crankDegOf[Require.Within(cylinder, 1, Order.Cylinders.Count)]);

    /// <summary>The same crank throws fired in another order.</summary>
    internal FiringSchedule With(FiringOrder order) => new(order, IntervalsCrankDeg);
}
