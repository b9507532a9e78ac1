namespace GrindShop.Lobes;

/// <summary>
/// The turns at which a lobe of a given base circle stays in the band. A turn moves the surface along its normal by at most the
/// greatest lift velocity times the turn, so stepping by what is left to spare over that velocity can't jump over an edge.
/// </summary>
internal sealed class TurnSearch
{
    private const double CoarseDeg = 3, WidestDeg = 30, FoundIn = 1e-6;
    private const int MostSteps = 200;
    private readonly BlankOutline blank;
    private readonly (double X, double Y)[] surface;
    private readonly BandLimits limits;
    private readonly double slopeInPerDeg;
    private readonly bool undercut;

    public TurnSearch(BlankOutline blank, FinishLobe finish, BandLimits limits, double baseRadiusIn)
    {
        (this.blank, this.limits) = (blank, limits);
        surface = finish.Surface(baseRadiusIn, out undercut);
        slopeInPerDeg = Math.Max(finish.Law.MaxVelocityInPerCamDeg, 1e-6);
    }

    public TurnRange? Find()
    {
        if (undercut)
            return null;
        if (blank is RoundOutline)
            return Spare(0) >= 0 ? new(-180, 180) : null;
        var start = Spare(0) >= 0 ? 0 : Best();
        if (Spare(start) < 0)
            return null;
        double low = Edge(start, -1), high = Edge(start, 1);
        return new(low, high);
    }

    /// <summary>What is left to the nearer limit, in; negative outside the band.</summary>
    private double Spare(double turnDeg)
    {
        var removal = Removal.Between(blank, surface, turnDeg * AngleMath.RadPerDeg);
        return Math.Min(removal.MinIn - limits.CleanupIn, (limits.MostRemovalIn ?? double.PositiveInfinity) - removal.MaxIn);
    }

    private double Best()
    {
        double best = 0, spare = double.NegativeInfinity;
        for (var turn = -WidestDeg; turn <= WidestDeg; turn += CoarseDeg)
            if (Spare(turn) is var here && here > spare)
                (best, spare) = (turn, here);
        return spare >= 0 ? best : Root.Minimum(x => -Spare(x), best - CoarseDeg, best + CoarseDeg, 1e-5).At;
    }

    private double Edge(double start, int side)
    {
        var turn = start;
        for (var step = 0; step < MostSteps && Math.Abs(turn - start) < 180; step++)
        {
            var spare = Spare(turn);
            if (spare < FoundIn)
                return turn;
            turn += side * spare / slopeInPerDeg;
        }
        return Math.Abs(turn - start) < 180 ? turn : start + side * 180;
    }
}
