namespace GrindShop.Lobes;

/// <summary>Whether a finished lobe comes out of a blank's lobe, and with what to spare.</summary>
/// <param name="MaxBaseCircleDiameterIn">Largest base circle at which the lobe, not undercut, leaves the clean-up everywhere, in; 0 when none does.</param>
/// <param name="BaseCircleDiameterIn">The base circle that was judged, in; 0 when there is none (the removals then belong to the least one without undercut).</param>
/// <param name="MinRemovalIn">Least metal removed along the normal, in; negative where the finished lobe pokes out.</param>
/// <param name="MinRemovalAtCamDeg">Cam angle at which the follower touches where least came off.</param>
/// <param name="MaxRemovalIn">Most metal removed, in.</param>
/// <param name="MaxRemovalAtCamDeg">Cam angle at which the follower touches where most came off.</param>
/// <param name="LeastCaseLeftIn">Case under the finished surface where most came off, in; null when hard all through.</param>
/// <param name="InsideOutsideEdge">The clean-up is reached everywhere.</param>
/// <param name="CaseKept">Enough case is left everywhere.</param>
/// <param name="Undercut">At this base circle the follower would undercut the lobe, so it would not be the lobe wanted.</param>
public readonly record struct BandAnswer(
    double MaxBaseCircleDiameterIn,
    double BaseCircleDiameterIn,
    double MinRemovalIn,
    double MinRemovalAtCamDeg,
    double MaxRemovalIn,
    double MaxRemovalAtCamDeg,
    double? LeastCaseLeftIn,
    bool InsideOutsideEdge,
    bool CaseKept,
    bool Undercut)
{
    /// <summary>The lobe comes out: inside the outside edge, the case kept, a base circle left, nothing undercut.</summary>
    public bool Fits => InsideOutsideEdge && CaseKept && !Undercut && BaseCircleDiameterIn > 0;
}
