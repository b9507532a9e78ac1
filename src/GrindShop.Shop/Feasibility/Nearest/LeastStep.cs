namespace GrindShop.Shop.Feasibility;

/// <summary>The least number of steps at which something comes true and stays true a while: doubling, then halving.</summary>
internal static class LeastStep
{
    /// <summary>Least of 1 to <paramref name="most"/>; null where none of the doubled steps does.</summary>
    public static int? Of(int most, Func<int, bool> holds)
    {
        var miss = 0;
        for (var step = 1; most > 0; step = Math.Min(2 * step, most))
        {
            if (holds(step))
                return Between(miss, step, holds);
            if (step == most)
                break;
            miss = step;
        }
        return null;
    }

    /// <summary>Least step above one that fails, given one that holds.</summary>
    public static int Between(int fails, int holding, Func<int, bool> holds)
    {
        while (holding - fails > 1)
        {
            var middle = (fails + holding) / 2;
            (fails, holding) = holds(middle) ? (fails, middle) : (middle, holding);
        }
        return holding;
    }
}
