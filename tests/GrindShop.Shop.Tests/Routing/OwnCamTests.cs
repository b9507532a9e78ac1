using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Orders;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;
using GrindShop.Testing;

namespace GrindShop.Shop.Tests.Routing;

/// <summary>Cams of the customer's between the price and the end of the work, while rules and wishes change.</summary>
public sealed class OwnCamTests : IAsyncLifetime
{
    private static readonly MeasuredCam Used = new()
    {
        BaseCircleDiameterIn = 1.13,
        IntakeLobeLiftIn = .345,
        ExhaustLobeLiftIn = .345,
        IntakeDurationAt050CrankDeg = 226,
        ExhaustDurationAt050CrankDeg = 226,
        Alloy = BlankAlloy.AustemperedDuctileIron,
        Hardening = Hardening.Through,
    };

    private static readonly CamEntry Regrind = new() { Kind = WorkKind.Regrind, Spec = Wishes.Street, ReceivedCondition = "Two lobes pitted." };

    private static readonly CamEntry NewGear = new()
    {
        Kind = WorkKind.GearReplacement,
        Spec = new CamSpec { EngineFamily = "RV8-R", DistributorGear = DistributorGear.Bronze },
        ReceivedCondition = "Three teeth gone.",
        Gear = new GearSwap { Marks = "M-14", Old = CamGear.PressedIron, New = CamGear.PressedIron },
    };

    private TestDatabase _database = null!;
    private TestShop _shop = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task A_gear_that_the_owner_has_forbidden_since_the_price_is_not_pressed_on()
    {
        var order = await AcceptedAsync(NewGear);
        await ForbidAsync("gear/rear/pressedIron/bronze", "It eats the bronze.");

        var refusal = (await StartAsync(order)).Refusal!;

        Assert.Equal("doesNotFit", refusal.Code);
        Assert.Contains("It eats the bronze.", refusal.Reason, StringComparison.Ordinal);
        Assert.Equal(0, (await FindAsync(order)).First.Started);
    }

    [Fact]
    public async Task A_measured_cam_that_the_owners_rules_have_forbidden_since_the_price_is_not_ground()
    {
        var order = await AcceptedAsync(Regrind with { Measured = Used });
        await ForbidAsync("lifter/austemperedDuctileIron/hydraulicRoller", "Rollers pit it.");

        var refusal = (await StartAsync(order)).Refusal!;

        Assert.Equal("doesNotFit", refusal.Code);
        Assert.Contains("Rollers pit it.", refusal.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_preview_of_a_measured_regrind_says_what_the_revision_then_does()
    {
        var order = await AcceptedAsync(Regrind with { Measured = Used });
        var job = (await StartAsync(order)).Value!;
        order = await FindAsync(order);
        var terms = Terms(order) with { Spec = order.First.Spec with { LobeSeparationCamDeg = 111 } };

        var preview = await _shop.Changing.PreviewAsync(order, terms);
        var revised = await _shop.Changing.ReviseAsync(order.Number, order.Version, terms, "Desk");

        Assert.Equal($"{job.Code} goes on with the customer's own cam.", revised.Value!.BlankEffect);
        Assert.Equal(revised.Value.BlankEffect, preview.Value!.BlankEffect);
    }

    [Theory]
    [InlineData(false, 111d, true)]
    [InlineData(true, 111d, false)]
    [InlineData(true, null, true)]
    public async Task Other_lobes_are_taken_on_until_they_are_ground(bool isGround, double? separation, bool goesOn)
    {
        var order = await AcceptedAsync(Regrind);
        var job = (await StartAsync(order)).Value!;
        foreach (var stage in isGround ? new[] { Stage.Receive, Stage.Grind } : [Stage.Receive])
            Assert.True((await _shop.Floor.CompleteAsync(job.Code, stage, "Floor", $"key-{stage}")).Succeeded);
        order = await FindAsync(order);
        var terms = Terms(order) with { Spec = order.First.Spec with { LobeSeparationCamDeg = separation, Notes = "Ship to the track." } };

        var revised = await _shop.Changing.ReviseAsync(order.Number, order.Version, terms, "Desk");

        Assert.Equal(goesOn ? $"{job.Code} goes on with the customer's own cam." : $"{job.Code} ends; the customer's cam goes back as it is.", revised.Value!.BlankEffect);
    }

    /// <summary>No blank of the shop takes the place of a cam that the customer brought.</summary>
    [Fact]
    public async Task A_spoilt_one_takes_no_blank_and_sends_the_desk_to_the_customer()
    {
        var order = await AcceptedAsync(Regrind with { Measured = Used });
        var job = (await StartAsync(order)).Value!;

        var result = (await _shop.Scrapping.ScrapAsync(job.Code, "Nose burnt", "Grinder", "scrap")).Value!;

        Assert.Null(result.Replacement);
        Assert.Contains("talk to the customer", result.Words, StringComparison.Ordinal);
        Assert.Single(await _shop.Floor.JobsOfAsync(order.Number));
        Assert.Equal($"{job.Code} scrapped: Nose burnt. It was the customer's own cam: talk to the customer.", (await FindAsync(order)).History[^1].What);
        Assert.Equal("ended", (await _shop.Of<BlankReturn>().GiveBackAsync(job.Code, "Wrong", "Desk", "back")).Refusal!.Code);
    }

    private Task<Outcome<Job>> StartAsync(Order order) => _shop.Allocation.StartAsync(order.Number, order.Version, null, "Desk");

    private async Task<Order> FindAsync(Order order) => (await _shop.Desk.FindAsync(order.Number))!;

    private async Task ForbidAsync(string key, string reason)
    {
        var (rule, _) = (await _shop.Rules.FindAsync(key))!.Value;
        Assert.True((await _shop.Rules.ChangeAsync(new RuleEdit(rule.Key, rule.Version, RuleVerdict.No, reason, "two came back"), "Owner")).Succeeded);
    }

    private async Task<Order> AcceptedAsync(CamEntry cam)
    {
        var order = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("own") with { Kind = cam.Kind, Spec = cam.Spec, ReceivedCondition = cam.ReceivedCondition, Gear = cam.Gear }, "Desk")).Order!;
        if (cam.Measured is not null)
            order = (await _shop.Desk.SetWorkAsync(order.Number, order.Version, 1, cam, "Desk")).Value!;
        var offer = new QuoteOffer { Parts = new Dictionary<int, string>(), Lines = [new PriceLine("own-1", "Repair", 120) { Reason = "by hand" }], ValidUntil = SomeOrders.Today.AddDays(10) };
        order = (await _shop.Desk.QuoteAsync(order.Number, order.Version, offer, "Desk")).Value!;
        return (await _shop.Desk.AcceptAsync(order.Number, order.Version, SomeOrders.Today.AddDays(14), "Desk")).Value!;
    }

    private static RevisionTerms Terms(Order order) => new()
    {
        Spec = order.First.Spec,
        PartNumber = order.First.QuotedPartNumber,
        PromisedOn = order.PromisedOn!.Value,
        AgreedBy = "Una Thornquist",
        AgreedHow = OrderChannel.Phone,
        Why = "Asked on the phone.",
    };
}
