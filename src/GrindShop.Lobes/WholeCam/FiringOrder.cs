using System.Globalization;

namespace GrindShop.Lobes;

/// <summary>The cylinders in the order in which they fire, each once, numbered from 1.</summary>
public sealed class FiringOrder
{
    public const int MostCylinders = 32;

    private FiringOrder(IReadOnlyList<int> cylinders) => Cylinders = cylinders;

    public IReadOnlyList<int> Cylinders { get; }

    /// <summary>Reads an order such as <c>1-8-4-3-6-5-7-2</c>; commas, strokes and spaces separate as well as dashes.</summary>
    /// <param name="text">What the customer wrote.</param>
    /// <param name="cylinders">The engine's number of cylinders, 1-32.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="cylinders"/> is outside 1-32.</exception>
    public static Outcome<FiringOrder, FiringOrderProblem> Parse(string? text, int cylinders)
    {
        Require.Within(cylinders, 1, MostCylinders);
        var words = (text ?? "").Split(['-', ',', '/', ' ', '\t'], StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0)
            return new FiringOrderProblem.Nothing();
        var notNumber = words.FirstOrDefault(word => Number(word) is null);
        if (notNumber is not null)
            return new FiringOrderProblem.NotACylinder(notNumber, cylinders);
        return Of([.. words.Select(word => Number(word)!.Value)], cylinders);
    }

    /// <summary>The same from numbers already read.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="cylinders"/> is outside 1-32.</exception>
    public static Outcome<FiringOrder, FiringOrderProblem> Of(IReadOnlyList<int> order, int cylinders)
    {
        Require.Within(cylinders, 1, MostCylinders);
        return Problem(order, cylinders) is { } problem ? problem : new FiringOrder([.. order]);
    }

    /// <summary>The order with two cylinders exchanged.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A cylinder is not in the order.</exception>
    public FiringOrder Swapped(int one, int other)
    {
        Require.Within(one, 1, Cylinders.Count);
        Require.Within(other, 1, Cylinders.Count);
        return new([.. Cylinders.Select(cylinder => cylinder == one ? other : cylinder == other ? one : cylinder)]);
    }

    /// <summary>The same cylinders follow one another, wherever the order starts.</summary>
    public bool SameSequenceAs(FiringOrder other)
    {
        if (other.Cylinders.Count != Cylinders.Count)
            return false;
        var start = other.Cylinders.TakeWhile(cylinder => cylinder != Cylinders[0]).Count();
        return other.Cylinders.Skip(start).Concat(other.Cylinders.Take(start)).SequenceEqual(Cylinders);
    }

    public override string ToString() => string.Join('-', Cylinders);

    private static int? Number(string word) =>
        int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static FiringOrderProblem? Problem(IReadOnlyList<int> order, int cylinders)
    {
        foreach (var cylinder in order)
            if (cylinder < 1 || cylinder > cylinders)
                return new FiringOrderProblem.NotACylinder(cylinder.ToString(CultureInfo.InvariantCulture), cylinders);
        if (order.GroupBy(cylinder => cylinder).FirstOrDefault(group => group.Count() > 1) is { } repeated)
            return new FiringOrderProblem.Repeated(repeated.Key);
        var missing = Enumerable.Range(1, cylinders).Except(order).ToList();
        return missing.Count > 0 ? new FiringOrderProblem.Missing(missing, cylinders) : null;
    }
}
