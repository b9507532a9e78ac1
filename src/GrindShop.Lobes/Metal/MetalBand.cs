namespace GrindShop.Lobes;

/// <summary>
/// Does the lobe come out of the blank? Measures true normal distances all round: slow and plain, the reference for
/// the quick judge of many blanks.
/// </summary>
public static class MetalBand
{
    /// <summary>Removals within this of a limit count as on it, in.</summary>
    public const double ToleranceIn = 1e-6;

    /// <param name="blank">The blank's lobe.</param>
    /// <param name="finish">The lobe wanted.</param>
    /// <param name="turnCamDeg">Turn of the finished lobe against the blank's, cam degrees, positive towards the closing side.</param>
    /// <param name="limits">Clean-up and case.</param>
    /// <param name="baseCircleDiameterIn">Base circle to judge, in; null judges the largest that works.</param>
    /// <param name="largestBaseCircleDiameterIn">Cap on the base circle judged when none is given, in.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not a number or outside its range.</exception>
    public static BandAnswer Judge(
        BlankOutline blank,
        FinishLobe finish,
        double turnCamDeg,
        BandLimits limits,
        double? baseCircleDiameterIn = null,
        double? largestBaseCircleDiameterIn = null)
    {
        ArgumentNullException.ThrowIfNull(blank);
        ArgumentNullException.ThrowIfNull(finish);
        var turn = AngleMath.Wrap(Require.Angle(turnCamDeg, nameof(turnCamDeg)) * AngleMath.RadPerDeg);
        Require.Length(baseCircleDiameterIn ?? 1, nameof(baseCircleDiameterIn));
        Require.Length(largestBaseCircleDiameterIn ?? 1, nameof(largestBaseCircleDiameterIn));
        var max = MaxBaseRadius(blank, finish, turn, limits.Checked().CleanupIn);
        var judged = baseCircleDiameterIn / 2 ?? Math.Min(max, largestBaseCircleDiameterIn / 2 ?? max);
        return Answer(max, judged, Removal.Between(blank, finish, judged > 0 ? judged : finish.LeastBaseRadiusIn, turn), limits);
    }

    internal static BandAnswer Answer(double maxRadius, double judgedRadius, Removal removal, BandLimits limits) => new(
        2 * maxRadius,
        2 * judgedRadius,
        removal.MinIn,
        AngleMath.Wrap(removal.MinAtRad) / AngleMath.RadPerDeg,
        removal.MaxIn,
        AngleMath.Wrap(removal.MaxAtRad) / AngleMath.RadPerDeg,
        limits.CaseDepthIn - removal.MaxIn,
        removal.MinIn >= limits.CleanupIn - ToleranceIn,
        limits.MostRemovalIn is not { } most || removal.MaxIn <= most + ToleranceIn,
        removal.Undercut);

    /// <summary>
    /// The lobe grows with its base circle by at most as much along its normals, so the least removal falls with it, by at most as much;
    /// that gives one end of the bracket from any start, and twice as far is the other end on any usable flank.
    /// </summary>
    private static double MaxBaseRadius(BlankOutline blank, FinishLobe finish, double turn, double cleanup)
    {
        double Spare(double radius) => Removal.Between(blank, finish, radius, turn).MinIn - cleanup;
        var least = finish.LeastBaseRadiusIn;
        var start = Math.Max(blank.Body.LeastRadiusIn - cleanup, least);
        var spare = Spare(start);
        double near = Math.Max(start + spare, least), far = Math.Max(start + 2.5 * spare, least);
        if (Spare(near) * Spare(far) <= 0)
            return Root.InBracket(Spare, near, far, 1e-8);
        var highest = Math.Max(blank.Body.GreatestRadiusIn, 2 * least);
        return Spare(least) < 0 ? 0 : Root.InBracket(Spare, least, highest, 1e-8);
    }
}
