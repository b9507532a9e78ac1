using System.Globalization;
using GrindShop.Lobes;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>What an offer asks the customer to give up, in plain words.</summary>
internal static class GivenUpWords
{
    /// <summary>A base circle this much under the family's usual one is worth a word, in.</summary>
    private const double WorthAWordIn = .010;

    public static IEnumerable<string> Of(GrindSpec wish, GrindSpec grind, BlankFit fit, EngineFamily family) =>
    [
        .. Figure("lobe separation", wish.LobeSeparationCamDeg, grind.LobeSeparationCamDeg, "0.##", "cam degrees"),
        .. Figure("intake centreline", wish.IntakeCenterlineCrankDeg, grind.IntakeCenterlineCrankDeg, "0.##", "crank degrees"),
        .. Lobe("intake", wish.Intake, grind.Intake),
        .. Lobe("exhaust", wish.Exhaust, grind.Exhaust),
        .. Gear(wish, grind),
        .. BaseCircle(fit, family),
        .. Waiting(fit),
    ];

    private static IEnumerable<string> Lobe(string name, LobeSpec wish, LobeSpec lobe) =>
    [
        .. Figure($"{name} duration at .050", wish.DurationAt050CrankDeg, lobe.DurationAt050CrankDeg, "0.#", "crank degrees"),
        .. Figure($"{name} advertised duration", wish.AdvertisedDurationCrankDeg, lobe.AdvertisedDurationCrankDeg, "0.#", "crank degrees"),
        .. Figure($"{name} lobe lift", wish.LobeLiftIn, lobe.LobeLiftIn, ".000#", "in"),
    ];

    private static IEnumerable<string> Gear(GrindSpec wish, GrindSpec grind)
    {
        if (grind.DistributorGear is { } gear && wish.DistributorGear is { } wanted && gear != wanted)
            yield return $"distributor gear: {gear.Words()} instead of {wanted.Words()}";
    }

    private static IEnumerable<string> BaseCircle(BlankFit fit, EngineFamily family)
    {
        if (Math.Min(fit.IntakeBaseCircleDiameterIn ?? 0, fit.ExhaustBaseCircleDiameterIn ?? 0) is var least && least < family.UsualBaseCircleIn - WorthAWordIn)
            yield return string.Create(CultureInfo.InvariantCulture, $"base circle {least:0.000} in instead of the usual {family.UsualBaseCircleIn:0.000} in");
    }

    private static IEnumerable<string> Waiting(BlankFit fit)
    {
        if (!fit.InStock)
            yield return $"time: blank {fit.PartNumber} has to be ordered, about {fit.LeadTimeDays} days";
    }

    private static IEnumerable<string> Figure(string name, double wish, double offered, string format, string unit)
    {
        if (wish != offered)
            yield return $"{name} {offered.ToString(format, CultureInfo.InvariantCulture)} instead of {wish.ToString(format, CultureInfo.InvariantCulture)} {unit}";
    }
}
