using GrindShop.Papers;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Web.Tests.Settings;

/// <summary>An everyday enquiry with a mechanical fuel pump, and its paper.</summary>
internal static class Some
{
    public static Enquiry Enquiry => new()
    {
        SubmitKey = Guid.NewGuid().ToString(),
        Channel = OrderChannel.Phone,
        Contact = new Contact { Name = "Aldo Brenninck", Phone = "555 010 7788" },
        Spec = new CamSpec
        {
            EngineFamily = "RV8-R",
            Lifter = LifterType.HydraulicRoller,
            FollowerDiameterIn = .75,
            Intake = new LobeWish { LobeLiftIn = .335, DurationAt050CrankDeg = 222, AdvertisedDurationCrankDeg = 272 },
            Exhaust = new LobeWish { LobeLiftIn = .335, DurationAt050CrankDeg = 230, AdvertisedDurationCrankDeg = 280 },
            LobeSeparationCamDeg = 112,
            IntakeCenterlineCrankDeg = 108,
            DistributorGear = DistributorGear.Iron,
            MechanicalFuelPump = true,
        },
    };

    public static async Task<TravelerFacts> TravelerAsync(ShopApp app, string jobCode)
    {
        var job = (await app.Services.GetRequiredService<JobFloor>().FindAsync(jobCode))!;
        var settings = (await app.Services.GetRequiredService<Catalog>().ContentAsync()).Rules.Settings;
        return new TravelerFacts(job, settings, $"http://shop.example/floor/jobs/{jobCode}", DateTimeOffset.UtcNow);
    }
}
