using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Orders;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Routing;

/// <summary>A further cam in an order that is accepted already: drawn up by the desk, and then agreed as a revision.</summary>
public sealed class DrawnUpCamTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _shop = null!;
    private string _number = null!;
    private string _part = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
        var order = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("key"), "Una")).Order!;
        (_number, _part) = (order.Number, order.First.Answer!.Best!.PartNumber);
        order = (await _shop.Desk.QuoteAsync(_number, order.Version, _part, SomeOrders.Lines, "Desk")).Value!;
        Assert.True((await _shop.Desk.AcceptAsync(_number, order.Version, SomeOrders.Today.AddDays(20), "Desk")).Succeeded);
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task Nothing_is_made_of_it_and_the_customer_hears_nothing_until_it_is_agreed()
    {
        var mails = (await _shop.Outbox.OfOrderAsync(_number)).Count;
        var drawn = await DrawUpAsync();

        var order = await OrderAsync();
        Assert.True(order.IsDrawnUp(drawn));
        Assert.Equal((OrderState.Accepted, 300m, 1, 0), (order.State, order.Price, order.Pieces, drawn.Waiting));
        Assert.Equal(1, Assert.Single(order.ToldCams).Ordinal);
        Assert.Equal(mails, (await _shop.Outbox.OfOrderAsync(_number)).Count);
        Assert.Equal("allStarted", (await _shop.Allocation.StartAsync(_number, order.Version, _part, "Desk", cam: 2)).Refusal!.Code);
        Assert.DoesNotContain(await _shop.Batch.WaitingAsync(), piece => piece.Order.Number == _number && piece.Cam.Ordinal == 2);
    }

    [Fact]
    public async Task Agreed_it_waits_for_its_blanks_and_the_letter_tells_it_whole()
    {
        await DrawUpAsync();

        var revised = (await AgreeAsync(2, 250)).Value!;

        Assert.Equal("No blank had been taken. 2 pieces are wanted; 2 of them wait for a blank.", revised.BlankEffect);
        Assert.Equal(("none", "2"), revised.Changes.Single(change => change.Name == "Pieces") is var pieces ? (pieces.Was, pieces.Now) : default);
        Assert.Contains(revised.Changes, change => change.Name == "Engine family" && change.Was is null);
        var order = await OrderAsync();
        Assert.Equal((550m, 3, 2, OrderState.Accepted), (order.Price, order.Pieces, order.Cam(2)!.Waiting, order.State));
        var letter = (await _shop.Outbox.OfOrderAsync(_number))[^1];
        Assert.Contains("Cam 2: ", letter.Text, StringComparison.Ordinal);
        Assert.Contains("2 pieces", letter.Text, StringComparison.Ordinal);
        Assert.Equal(2, (await _shop.Batch.WaitingAsync()).Count(piece => piece.Order.Number == _number && piece.Cam.Ordinal == 2));
        Assert.True((await _shop.Allocation.StartAsync(_number, order.Version, _part, "Desk", cam: 2)).Succeeded);
    }

    [Fact]
    public async Task What_the_rules_ask_for_it_is_the_whole_price_of_its_pieces()
    {
        var drawn = await DrawUpAsync();
        var asked = (await _shop.Desk.DraftAsync((await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("alike"), "Ute")).Order!, new Dictionary<int, CamChoice> { [1] = new(_part, []) })).Value!.Lines.Sum(line => line.Amount);

        Assert.Equal(asked, await _shop.Desk.PriceDifferenceAsync(drawn, drawn.Answer, _part, 1));
    }

    [Fact]
    public async Task It_is_changed_or_dropped_freely_until_it_is_agreed_and_not_afterwards()
    {
        var drawn = await DrawUpAsync();
        var regrind = drawn.Entry with { Kind = WorkKind.Regrind, Quantity = 1, ReceivedCondition = "Worn.", IsExpected = true };
        Assert.True((await _shop.Desk.SetWorkAsync(_number, (await OrderAsync()).Version, 2, regrind, "Desk")).Succeeded);
        Assert.Equal((WorkKind.Regrind, 0), ((await OrderAsync()).Cam(2)!.Kind, (await OrderAsync()).Cam(2)!.Quantity));
        Assert.True((await _shop.Desk.RemoveCamAsync(_number, (await OrderAsync()).Version, 2, "Desk")).Succeeded);
        Assert.Null((await OrderAsync()).Cam(2));

        await DrawUpAsync();
        var ordinal = (await OrderAsync()).Cams[^1].Ordinal;
        Assert.True((await AgreeAsync(1, 100, ordinal)).Succeeded);
        var order = await OrderAsync();
        Assert.Equal("wrongState", (await _shop.Desk.RemoveCamAsync(_number, order.Version, ordinal, "Desk")).Refusal!.Code);
        Assert.Equal("wrongState", (await _shop.Desk.SetWorkAsync(_number, order.Version, ordinal, order.First.Entry, "Desk")).Refusal!.Code);
        Assert.True((await AgreeAsync(0, -100, ordinal)).Succeeded);
        Assert.False((await OrderAsync()).IsDrawnUp((await OrderAsync()).Cam(ordinal)!));
        Assert.Equal("wrongState", (await _shop.Desk.RemoveCamAsync(_number, (await OrderAsync()).Version, ordinal, "Desk")).Refusal!.Code);
    }

    [Fact]
    public async Task It_is_agreed_with_pieces_whole_and_as_the_rules_of_the_day_allow()
    {
        var drawn = await DrawUpAsync();
        Assert.Equal("noPieces", (await AgreeAsync(0, 0)).Refusal!.Code);
        var (rule, _) = (await _shop.Rules.FindAsync($"lifter/{Key((await PartAsync()).Alloy)}/hydraulicRoller"))!.Value;
        Assert.True((await _shop.Rules.ChangeAsync(new RuleEdit(rule.Key, rule.Version, RuleVerdict.No, "Rollers pit it.", "two came back"), "Owner")).Succeeded);
        Assert.Equal("doesNotFit", (await AgreeAsync(1, 100)).Refusal!.Code);

        var gear = new CamEntry
        {
            Kind = WorkKind.GearReplacement,
            Spec = new CamSpec { EngineFamily = drawn.Spec.EngineFamily },
            ReceivedCondition = "Worn.",
            Gear = new GearSwap { Marks = "M-1", Old = CamGear.PressedIron, New = CamGear.PressedIron },
        };
        var ordinal = (await _shop.Desk.AddCamAsync(_number, (await OrderAsync()).Version, gear, "Desk")).Value!.Cams[^1].Ordinal;
        Assert.True((await _shop.Desk.SetWorkAsync(_number, (await OrderAsync()).Version, ordinal, gear with { Kind = WorkKind.Regrind, Gear = null }, "Desk")).Succeeded);
        Assert.Equal("badSpec", (await AgreeAsync(1, 100, ordinal)).Refusal!.Code);
        Assert.Equal(1, (await OrderAsync()).Pieces);
    }

    [Fact]
    public async Task Questions_of_the_customer_do_not_speak_of_it()
    {
        await DrawUpAsync();
        Assert.Equal("Which gear?", (await OrderAsync()).OfCam(1, [], "Which gear?"));
    }

    [Fact]
    public async Task Blanks_that_others_wait_for_are_told_before_it_is_agreed()
    {
        await DrawUpAsync();
        var order = await OrderAsync();
        var free = (await _shop.Desk.JudgeTodayAsync(order)).Fits[1];
        var preview = (await _shop.Changing.PreviewAsync(order, Terms(order, CamIntake.MostPieces, 100, 2))).Value!;
        Assert.True(free.Usable);
        Assert.StartsWith($"Blank {_part}: {CamIntake.MostPieces} needed, ", preview.Shortage, StringComparison.Ordinal);
        Assert.Null((await _shop.Changing.PreviewAsync(order, Terms(order, 1, 100, 2))).Value!.Shortage);
    }

    [Fact]
    public async Task Order_ships_without_a_cam_that_was_never_agreed()
    {
        await DrawUpAsync();
        var job = (await _shop.Allocation.StartAsync(_number, (await OrderAsync()).Version, _part, "Desk")).Value!.Code;
        while ((await _shop.Floor.FindAsync(job)) is { IsOpen: true, Current.Stage: var stage })
            Assert.True((await _shop.Floor.CompleteAsync(job, stage, "Floor", $"{stage}")).Succeeded);

        var order = await OrderAsync();
        Assert.Equal(OrderState.Shipped, order.State);
        Assert.Equal("wrongState", (await _shop.Desk.AddCamAsync(_number, order.Version, order.First.Entry, "Desk")).Refusal!.Code);
    }

    private async Task<OrderCam> DrawUpAsync()
    {
        var order = await OrderAsync();
        var drawn = await _shop.Desk.AddCamAsync(_number, order.Version, new CamEntry { Spec = Wishes.Street }, "Desk");
        Assert.Null(drawn.Refusal);
        return drawn.Value!.Cams[^1];
    }

    private async Task<Outcome<OrderRevision>> AgreeAsync(int pieces, decimal priceChange, int cam = 2)
    {
        var order = await OrderAsync();
        return await _shop.Changing.ReviseAsync(_number, order.Version, Terms(order, pieces, priceChange, cam), "Desk");
    }

    private RevisionTerms Terms(Order order, int pieces, decimal priceChange, int cam) => new()
    {
        Cam = cam,
        Spec = order.Cam(cam)!.Spec,
        PartNumber = order.Cam(cam)!.NeedsBlank ? _part : null,
        Quantity = pieces,
        PriceChange = priceChange,
        PriceReason = "another cam",
        PromisedOn = order.PromisedOn!.Value,
        AgreedBy = "Una Thornquist",
        AgreedHow = OrderChannel.Phone,
        Why = "One more is wanted.",
    };

    private async Task<BlankPart> PartAsync()
    {
        await using var db = _shop.Db();
        return await db.BlankParts.SingleAsync(part => part.PartNumber == _part);
    }

    private static string Key(BlankAlloy alloy) => System.Text.Json.JsonNamingPolicy.CamelCase.ConvertName(alloy.ToString());

    private async Task<Order> OrderAsync() => (await _shop.Desk.FindAsync(_number))!;
}
