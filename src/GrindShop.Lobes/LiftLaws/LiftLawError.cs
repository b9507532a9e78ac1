namespace GrindShop.Lobes;

/// <summary>Why a lobe specification has no lift law, in plain words.</summary>
/// <param name="Message">For the person who typed the specification.</param>
/// <param name="ReachableAdvertisedMinCrankDeg">Shortest advertised duration that works with the rest, crank degrees; null when something else is wrong.</param>
/// <param name="ReachableAdvertisedMaxCrankDeg">Longest one; null when something else is wrong.</param>
public sealed record LiftLawError(
    string Message, double? ReachableAdvertisedMinCrankDeg = null, double? ReachableAdvertisedMaxCrankDeg = null);
