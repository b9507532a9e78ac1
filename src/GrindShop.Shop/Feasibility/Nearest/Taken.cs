using GrindShop.Lobes;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>An offer taken over into the customer's own specification.</summary>
public static class Taken
{
    /// <summary>The wish with the offer's timing, lobes and gear; what the offer left alone stays as it was given or left empty.</summary>
    public static CamSpec Into(CamSpec wish, GrindSpec offer) => wish with
    {
        Intake = Lobe(wish.Intake, offer.Intake),
        Exhaust = Lobe(wish.Exhaust, offer.Exhaust),
        LobeSeparationCamDeg = offer.LobeSeparationCamDeg,
        IntakeCenterlineCrankDeg = offer.IntakeCenterlineCrankDeg,
        AdvanceCrankDeg = null,
        DistributorGear = offer.DistributorGear,
    };

    private static LobeWish Lobe(LobeWish wish, LobeSpec offer) => wish with
    {
        LobeLiftIn = offer.LobeLiftIn,
        ValveLiftIn = null,
        DurationAt050CrankDeg = offer.DurationAt050CrankDeg,
        AdvertisedDurationCrankDeg = offer.AdvertisedDurationCrankDeg,
        AdvertisedAtIn = offer.AdvertisedAtIn,
    };
}
