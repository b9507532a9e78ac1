namespace GrindShop.Lobes;

/// <summary>The turns at which a lobe of a given base circle stays in the band, found from the turn with the most to spare.</summary>
internal sealed class TurnSearch(BlankOutline blank, FinishLobe finish, BandLimits limits, double baseRadiusIn)
{
    private const double CoarseDeg = 2, FineDeg = 0.25;

    public TurnRange? Find()
    {
        var best = Best();
        if (Spare(best) < 0)
            return null;
        double low = Edge(best, -FineDeg), high = Edge(best, FineDeg);
        return high - low >= 360 ? new(-180, 180) : new(low, high);
    }

    /// <summary>What is left to the nearer limit, in; negative outside the band.</summary>
    private double Spare(double turnDeg)
    {
        var removal = Removal.Between(blank, finish, baseRadiusIn, turnDeg * AngleMath.RadPerDeg);
        return Math.Min(removal.MinIn - limits.CleanupIn, (limits.MostRemovalIn ?? double.PositiveInfinity) - removal.MaxIn) + MetalBand.ToleranceIn;
    }

    private double Best()
    {
        double best = 0, spare = Spare(0);
        for (var turn = -180 + CoarseDeg; turn <= 180; turn += CoarseDeg)
            if (Spare(turn) is var here && here > spare)
                (best, spare) = (turn, here);
        var (at, negative) = Root.Minimum(x => -Spare(x), best - CoarseDeg, best + CoarseDeg, 1e-5);
        return -negative > spare ? at : best;
    }

    private double Edge(double from, double step)
    {
        for (var turn = from; Math.Abs(turn - from) < 360; turn += step)
            if (Spare(turn + step) < 0)
                return Root.InBracket(Spare, turn, turn + step, 1e-5);
        return from + Math.Sign(step) * 360;
    }
}
