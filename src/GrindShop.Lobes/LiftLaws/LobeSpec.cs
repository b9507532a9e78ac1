namespace GrindShop.Lobes;

/// <summary>A lobe the way the trade states it: lobe lift and the duration at two check lifts.</summary>
/// <param name="LobeLiftIn">Greatest lifter rise, in.</param>
/// <param name="DurationAt050CrankDeg">Duration at .050 in lifter lift, crank degrees.</param>
/// <param name="AdvertisedDurationCrankDeg">Duration at the advertised check lift, crank degrees.</param>
/// <param name="AdvertisedAtIn">The advertised check lift, in; usually .006 (hydraulic) or .020 (solid).</param>
public sealed record LobeSpec(double LobeLiftIn, double DurationAt050CrankDeg, double AdvertisedDurationCrankDeg, double AdvertisedAtIn)
{
    /// <summary>The trade's usual check lift, in.</summary>
    public const double UsualCheckLiftIn = 0.050;
}
