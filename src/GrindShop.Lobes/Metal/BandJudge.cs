namespace GrindShop.Lobes;

/// <summary>A blank's lobe and the turn of the finished lobe against it, cam degrees, positive towards the closing side.</summary>
public readonly record struct TurnedBlank(BlankOutline Blank, double TurnCamDeg);

/// <summary>
/// The same answers as <see cref="MetalBand"/> for one finished lobe and very many blanks: a few microseconds each, nothing allocated
/// once a blank has met the follower (docs/performance.md). Immutable.
/// </summary>
public sealed class BandJudge
{
    private const double MostCleanupIn = 0.05;

    /// <summary>Deeper than this all round, the second-order distances no longer tell reliably where the least of them lies.</summary>
    private const double MostLeastIn = 0.15;
    private readonly FinishLobe finish;
    private readonly BandLimits limits;
    private readonly double? baseCircleDiameterIn, largestBaseCircleDiameterIn;
    private readonly bool quick;

    /// <param name="finish">The lobe wanted.</param>
    /// <param name="limits">Clean-up and case.</param>
    /// <param name="baseCircleDiameterIn">Base circle to judge, in; null judges the largest that works.</param>
    /// <param name="largestBaseCircleDiameterIn">Cap on the base circle judged when none is given, in.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not a number or outside its range.</exception>
    public BandJudge(FinishLobe finish, BandLimits limits, double? baseCircleDiameterIn = null, double? largestBaseCircleDiameterIn = null)
    {
        ArgumentNullException.ThrowIfNull(finish);
        Require.Length(baseCircleDiameterIn ?? 1, nameof(baseCircleDiameterIn));
        Require.Length(largestBaseCircleDiameterIn ?? 1, nameof(largestBaseCircleDiameterIn));
        (this.finish, this.limits) = (finish, limits.Checked());
        (this.baseCircleDiameterIn, this.largestBaseCircleDiameterIn) = (baseCircleDiameterIn, largestBaseCircleDiameterIn);
        var undercut = (baseCircleDiameterIn ?? largestBaseCircleDiameterIn) < finish.LeastBaseCircleDiameterIn;
        quick = finish.Ride.IsSmooth && !undercut && limits.CleanupIn <= MostCleanupIn;
    }

    public BandAnswer Judge(BlankOutline blank, double turnCamDeg)
    {
        ArgumentNullException.ThrowIfNull(blank);
        Require.Angle(turnCamDeg, nameof(turnCamDeg));
        return quick && Quick(blank, turnCamDeg * AngleMath.RadPerDeg) is { } answer
            ? answer
            : MetalBand.Judge(blank, finish, turnCamDeg, limits, baseCircleDiameterIn, largestBaseCircleDiameterIn);
    }

    /// <param name="blanks">The blanks.</param>
    /// <param name="answers">Takes the answers, one a blank.</param>
    public void JudgeMany(ReadOnlySpan<TurnedBlank> blanks, Span<BandAnswer> answers)
    {
        for (var i = 0; i < blanks.Length; i++)
            answers[i] = Judge(blanks[i].Blank, blanks[i].TurnCamDeg);
    }

    private BandAnswer? Quick(BlankOutline blank, double turnRad) => blank switch
    {
        RoundOutline round => FromRound(round),
        MilledOutline milled => FromMilled(milled.Ridden(finish.Follower), turnRad),
        _ => null,
    };

    /// <summary>Whether a path tells all: the follower reaches everywhere, and no removal is deep enough for normals to cross.</summary>
    private BandAnswer? FromMilled(RidePath path, double turnRad)
    {
        if (!path.ReachesAll || !path.IsSmooth || path.DeepestIn <= limits.CleanupIn)
            return null;
        var gap = new RideGap(path, finish.Ride, turnRad);
        var tightest = gap.MaxBase(limits.CleanupIn);
        double max = Possible(tightest.BaseRadiusIn), judged = Judged(max);
        var removal = gap.Removal(MeasuredAt(judged));
        if (judged == max && max > 0)
            removal = removal with { MinIn = limits.CleanupIn, MinAtRad = tightest.AtRad };
        return removal.MaxIn < path.DeepestIn && -removal.MinIn < path.FarthestOutIn && removal.MinIn < MostLeastIn ? MetalBand.Answer(max, judged, removal, limits) : null;
    }

    /// <summary>The nose stands out most and the heel least, whatever the turn.</summary>
    private BandAnswer FromRound(RoundOutline round)
    {
        var lift = finish.Law.LobeLiftIn;
        var max = Possible(round.RadiusIn - lift - limits.CleanupIn);
        var heel = round.RadiusIn - MeasuredAt(Judged(max));
        return MetalBand.Answer(max, Judged(max), new(heel - lift, 0, heel, Math.PI, false), limits);
    }

    private double Possible(double baseRadiusIn) => baseRadiusIn < finish.LeastBaseRadiusIn ? 0 : baseRadiusIn;

    private double Judged(double max) => baseCircleDiameterIn / 2 ?? Math.Min(max, largestBaseCircleDiameterIn / 2 ?? max);

    private double MeasuredAt(double judged) => judged > 0 ? judged : finish.LeastBaseRadiusIn;
}
