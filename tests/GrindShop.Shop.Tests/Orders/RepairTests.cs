using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;
using GrindShop.Testing;

namespace GrindShop.Shop.Tests.Orders;

public sealed class RepairTests : IAsyncLifetime
{
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

    [Theory]
    [InlineData(WorkKind.Regrind, "RV8-R", null, "receivedCondition")]
    [InlineData(WorkKind.GearReplacement, "RV8-R", "Teeth worn to points.", null)]
    [InlineData(WorkKind.GearReplacement, "FV8-F", "Teeth worn to points.", "engineFamily")]
    [InlineData(WorkKind.Regrind, "FV8-F", "Two lobes pitted.", null)]
    [InlineData(WorkKind.NewGrind, "FV8-F", null, null)]
    public void A_repair_says_how_the_cam_came_in_and_a_gear_is_replaced_only_at_the_rear(WorkKind kind, string family, string? condition, string? wrong) =>
        Assert.Equal(wrong, CamIntake.Problems(new CamEntry { Kind = kind, Spec = Wishes.Street, ReceivedCondition = condition, Gear = Iron }, Wishes.Family(family)).FirstOrDefault()?.Field);

    /// <summary>A gear that is one piece with its cam cannot be pressed off: common practice, no source.</summary>
    [Theory]
    [InlineData(CamGear.PressedIron, CamGear.PressedIron, null)]
    [InlineData(CamGear.AustemperedDuctileIron, CamGear.PressedIron, null)]
    [InlineData(CamGear.Steel, CamGear.PressedIron, "gear.old")]
    [InlineData(CamGear.HardenableIron, CamGear.PressedIron, "gear.old")]
    [InlineData(CamGear.PressedIron, CamGear.Steel, "gear.new")]
    public void Only_a_gear_that_was_pressed_on_comes_off(CamGear old, CamGear wanted, string? wrong) =>
        Assert.Equal(wrong, new GearSwap { Marks = "M-14", Old = old, New = wanted }.Problems().FirstOrDefault()?.Field);

    [Fact]
    public async Task A_gear_that_the_owner_forbids_with_this_distributor_gear_is_refused_with_the_owners_reason()
    {
        var entry = new CamEntry { Kind = WorkKind.GearReplacement, Spec = new CamSpec { EngineFamily = "RV8-R", DistributorGear = DistributorGear.Bronze }, ReceivedCondition = "Worn.", Gear = Iron };
        Assert.Empty((await _shop.Catalog.LookAsync(entry)).Problems);

        var (rule, _) = (await _shop.Rules.FindAsync("gear/rear/pressedIron/bronze"))!.Value;
        Assert.True((await _shop.Rules.ChangeAsync(new RuleEdit(rule.Key, rule.Version, RuleVerdict.No, "It eats the bronze.", "two came back"), "Owner")).Succeeded);

        var problem = Assert.Single((await _shop.Catalog.LookAsync(entry)).Problems);
        Assert.Equal("gear.new", problem.Field);
        Assert.Contains("It eats the bronze.", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_gear_replacement_is_taken_in_incomplete_completed_step_by_step_and_priced_only_then()
    {
        var taken = await _shop.Intake.TakeAsync(SomeOrders.Enquiry("walk", null, "555-555-0188") with { Channel = OrderChannel.WalkIn, Kind = WorkKind.GearReplacement, Spec = new CamSpec() }, "Desk");
        var order = taken.Order!;
        var offer = new QuoteOffer { Parts = new Dictionary<int, string>(), Lines = [new PriceLine("own-1", "Repair", 135) { Reason = "by hand" }], ValidUntil = SomeOrders.Today.AddDays(10) };
        Assert.Equal("incomplete", (await _shop.Desk.QuoteAsync(order.Number, order.Version, offer, "Desk")).Refusal!.Code);
        Assert.Equal(["engineFamily", "receivedCondition", "gear"], (await _shop.Desk.UnfinishedAsync(order.First)).Select(problem => problem.Field));

        order = (await _shop.Desk.SetWorkAsync(order.Number, order.Version, 1, new CamEntry { Kind = WorkKind.GearReplacement, Spec = new CamSpec(), ReceivedCondition = "Three teeth gone.", Gear = Iron }, "Desk")).Value!;
        order = (await _shop.Desk.CorrectAsync(order.Number, order.Version, new CamSpec { EngineFamily = "RV8-R" }, "asked", "Desk")).Value!;

        Assert.Empty(await _shop.Desk.UnfinishedAsync(order.First));
        Assert.Equal(135, (await _shop.Desk.QuoteAsync(order.Number, order.Version, offer, "Desk")).Value!.Price);
        Assert.Equal(Iron, (await _shop.Desk.FindAsync(order.Number))!.First.Gear);
    }

    [Fact]
    public async Task A_cam_that_was_only_told_of_is_put_to_work_once_somebody_has_looked_at_it()
    {
        var order = await AcceptedAsync(WorkKind.GearReplacement, isExpected: true);
        Assert.Equal("Expected, as the customer tells: Teeth worn, one lobe pitted.", order.First.ConditionWords);

        Assert.Equal("notHere", (await _shop.Allocation.StartAsync(order.Number, order.Version, null, "Desk")).Refusal!.Code);
        Assert.True((await _shop.Allocation.StartAsync(order.Number, order.Version, null, "Desk", condition: "Teeth worn, journals blue.")).Succeeded);

        order = (await _shop.Desk.FindAsync(order.Number))!;
        Assert.Equal("Came in like this: Teeth worn, journals blue.", order.First.ConditionWords);
        Assert.Contains(order.History, line => line.Kind == OrderEventKind.CameIn && line.What.EndsWith("journals blue.", StringComparison.Ordinal));
        Assert.Equal("Teeth worn, one lobe pitted.", Assert.Single(order.Quotes).Cams[0].ReceivedCondition);
    }

    [Fact]
    public void A_gear_replacement_asks_for_the_engine_the_marks_and_the_condition_not_for_lobes()
    {
        var asked = WorkQuestions.Of(new CamEntry { Kind = WorkKind.GearReplacement, Spec = new CamSpec() }, null);

        Assert.Equal(["engineFamily", "marks", "condition"], asked.Select(question => question.Field));
    }

    [Theory]
    [InlineData(0, "quantity")]
    [InlineData(99, null)]
    [InlineData(100, "quantity")]
    public void An_order_is_of_one_to_ninety_nine_pieces(int pieces, string? wrong) =>
        Assert.Equal(wrong, CamIntake.Problems(new CamEntry { Spec = Wishes.Street, Quantity = pieces }, Wishes.MainFamily).FirstOrDefault()?.Field);

    [Theory]
    [InlineData(WorkKind.GearReplacement, new[] { Stage.Receive, Stage.PressGear, Stage.Inspect, Stage.Ship })]
    [InlineData(WorkKind.Regrind, new[] { Stage.Receive, Stage.Grind, Stage.Finish, Stage.Inspect, Stage.Ship })]
    public async Task A_cam_that_came_in_walks_its_route_without_a_blank_and_ships(WorkKind kind, Stage[] route)
    {
        var order = await AcceptedAsync(kind);

        var job = (await _shop.Allocation.StartAsync(order.Number, order.Version, null, "Desk")).Value!;

        Assert.Null(job.BlankLotId);
        Assert.Equal(route, job.Steps.Select(step => step.Stage));
        foreach (var stage in route)
            Assert.True((await _shop.Floor.CompleteAsync(job.Code, stage, "Floor", $"key-{stage}")).Succeeded);
        var shipped = await _shop.Desk.FindAsync(order.Number);
        Assert.Equal((OrderState.Shipped, "Teeth worn, one lobe pitted."), (shipped!.State, shipped.First.ReceivedCondition));
    }

    /// <summary>The finished nose and base circle lie at least the clean-up of .004 in inside the worn ones: geometry, no source needed.</summary>
    [Theory]
    [InlineData(.345, 226)]
    [InlineData(.335, 222)]
    [InlineData(.360, 232)]
    public async Task A_measured_used_cam_is_ground_inside_its_own_surface(double lift, double at050)
    {
        var look = await LookAsync(Used(lift, at050));

        var fit = Assert.Single(look.Answer!.Blanks);
        Assert.True(fit.Usable, string.Join(' ', fit.Reasons));
        Assert.True(fit.IntakeBaseCircleDiameterIn <= 1.13 - .008 + 1e-6);
        Assert.True(fit.IntakeBaseCircleDiameterIn / 2 + .335 <= 1.13 / 2 + lift - .004 + 1e-6);
        Assert.True(fit.MinRemovalIn >= .004 - 1e-6);
    }

    [Fact]
    public async Task A_used_cam_has_the_pump_lobe_of_its_engine()
    {
        var entry = Regrind(Used(.345, 226));
        var look = await _shop.Catalog.LookAsync(entry with { Spec = entry.Spec with { MechanicalFuelPump = true } });

        Assert.True(Assert.Single(look.Answer!.Blanks).Usable, string.Join(' ', look.Answer.Reasons));
    }

    [Fact]
    public async Task A_cam_whose_condition_nobody_has_told_yet_is_expected_all_the_same()
    {
        var taken = await _shop.Intake.TakeAsync(SomeOrders.Enquiry("told-later") with { Kind = WorkKind.Regrind, ReceivedCondition = null, IsExpected = true }, "Desk");

        Assert.True(taken.Order!.First.IsExpected);
    }

    [Fact]
    public async Task A_used_cam_without_the_case_is_refused_with_the_reason_and_cannot_be_priced()
    {
        var look = await LookAsync(Used(.345, 226) with { Alloy = BlankAlloy.Steel5160, Hardening = Hardening.Induction, CaseLeftIn = .06 });

        Assert.Equal(Verdict.NotGrindable, look.Answer!.Verdict);
        Assert.Equal("The used cam cannot become this grind.", look.Answer.Reasons[0]);
        var order = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("key"), "Una")).Order!;
        order = (await _shop.Desk.SetWorkAsync(order.Number, order.Version, 1, Regrind(Used(.345, 226) with { Alloy = BlankAlloy.Steel5160, Hardening = Hardening.Induction, CaseLeftIn = .06 }), "Desk")).Value!;
        var offer = new QuoteOffer { Parts = new Dictionary<int, string>(), Lines = [new PriceLine("own-1", "Regrind", 120) { Reason = "by hand" }], ValidUntil = SomeOrders.Today.AddDays(10) };
        Assert.Equal("doesNotFit", (await _shop.Desk.QuoteAsync(order.Number, order.Version, offer, "Desk")).Refusal!.Code);
    }

    [Fact]
    public async Task Figures_that_no_used_cam_has_are_named()
    {
        Assert.Equal("measured.baseCircleDiameterIn", (await LookAsync(Used(.345, 226) with { BaseCircleDiameterIn = double.NaN })).Problems[0].Field);
        Assert.Equal("measured.caseLeftIn", (await LookAsync(Used(.345, 226) with { CaseLeftIn = .1 })).Problems[0].Field);
        Assert.Equal("measured.intakeLobeLiftIn", (await LookAsync(Used(2, 226))).Problems[0].Field);
    }

    private Task<CamLook> LookAsync(MeasuredCam measured) => _shop.Catalog.LookAsync(Regrind(measured));

    private static CamEntry Regrind(MeasuredCam measured) => new() { Kind = WorkKind.Regrind, Spec = Wishes.Street, ReceivedCondition = "Worn.", Measured = measured };

    private static MeasuredCam Used(double lift, double at050) => new()
    {
        BaseCircleDiameterIn = 1.13,
        IntakeLobeLiftIn = lift,
        ExhaustLobeLiftIn = lift,
        IntakeDurationAt050CrankDeg = at050,
        ExhaustDurationAt050CrankDeg = at050,
        Alloy = BlankAlloy.AustemperedDuctileIron,
        Hardening = Hardening.Through,
    };

    [Fact]
    public async Task A_cancelled_repair_gives_the_cam_back()
    {
        var order = await AcceptedAsync(WorkKind.Regrind);
        await _shop.Allocation.StartAsync(order.Number, order.Version, null, "Desk");
        order = (await _shop.Desk.FindAsync(order.Number))!;

        var cancelled = await _shop.Changing.CancelAsync(order.Number, order.Version, "Changed his mind.", "Desk");

        Assert.Contains("the customer's cam goes back as it is", cancelled.Value!.History[^1].What, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_regrind_and_a_new_cam_stand_in_one_order_with_one_price()
    {
        var order = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("key"), "Una")).Order!;
        var regrind = new CamEntry { Kind = WorkKind.Regrind, Spec = Wishes.Street, ReceivedCondition = "Worn." };
        order = (await _shop.Desk.AddCamAsync(order.Number, order.Version, regrind, "Desk")).Value!;
        var part = order.First.Answer!.Best!.PartNumber;
        var lines = (await _shop.Desk.DraftAsync(order, new Dictionary<int, CamChoice> { [1] = new(part, []) })).Value!.Lines;

        var quoted = await _shop.Desk.QuoteAsync(order.Number, order.Version, new QuoteOffer
        {
            Parts = new Dictionary<int, string> { [1] = part },
            Lines = [.. lines, new PriceLine("own-1", "Regrind", 140) { Cam = 2, Reason = "by hand" }],
            ValidUntil = SomeOrders.Today.AddDays(10),
        }, "Desk");

        Assert.Equal(lines.Sum(line => line.Amount) + 140, quoted.Value!.Price);
        Assert.Equal([part, null], quoted.Value.CurrentQuote!.Cams.Select(cam => cam.PartNumber));
    }

    private static GearSwap Iron => new() { Marks = "M-14", Old = CamGear.PressedIron, New = CamGear.PressedIron };

    private async Task<Order> AcceptedAsync(WorkKind kind, bool isExpected = false)
    {
        var submitted = await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("repair") with { Kind = kind, ReceivedCondition = "Teeth worn, one lobe pitted.", IsExpected = isExpected, Gear = Iron }, "Desk");
        var order = submitted.Order!;
        var offer = new QuoteOffer { Parts = new Dictionary<int, string>(), Lines = [new PriceLine("own-1", "Repair", 120) { Reason = "by hand" }], ValidUntil = SomeOrders.Today.AddDays(10) };
        order = (await _shop.Desk.QuoteAsync(order.Number, order.Version, offer, "Desk")).Value!;
        return (await _shop.Desk.AcceptAsync(order.Number, order.Version, SomeOrders.Today.AddDays(14), "Desk")).Value!;
    }
}
