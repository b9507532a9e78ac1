using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Orders;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Routing;

/// <summary>After acceptance more or fewer pieces are wanted: blanks, jobs and order follow.</summary>
public sealed class RevisedPiecesTests : IAsyncLifetime
{
    private const string Lot = "MANY-1";
    private const int Blanks = 30;

    private TestDatabase _database = null!;
    private TestShop _shop = null!;
    private string _number = null!;
    private string _part = null!;

    /// <summary>An order of a cam in three pieces and one in a single piece; nothing is begun.</summary>
    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
        var order = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("key") with { Quantity = 3 }, "Una")).Order!;
        (_number, _part) = (order.Number, order.First.Answer!.Best!.PartNumber);
        await OneLotAsync();
        order = (await _shop.Desk.AddCamAsync(_number, order.Version, new CamEntry { Spec = Wishes.Street }, "Desk")).Value!;
        var offer = new QuoteOffer { Parts = new Dictionary<int, string> { [1] = _part, [2] = _part }, Lines = [new PriceLine("base", "Grinding", 1200) { RuleAmount = 1200 }], ValidUntil = SomeOrders.Today.AddDays(30) };
        order = (await _shop.Desk.QuoteAsync(_number, order.Version, offer, "Desk")).Value!;
        Assert.True((await _shop.Desk.AcceptAsync(_number, order.Version, SomeOrders.Today.AddDays(20), "Desk")).Succeeded);
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task Fewer_pieces_give_the_uncut_blank_back_and_leave_the_cut_one()
    {
        var (cut, uncut) = (await StartAsync(), await StartAsync());
        await StepAsync(cut);

        var revised = (await ReviseAsync(1)).Value!;

        Assert.Equal("Pieces: 3 → 1", string.Join("; ", revised.Changes.Where(change => change.Name == "Pieces").Select(change => $"{change.Name}: {change.Was} → {change.Now}")));
        Assert.Contains($"{cut} goes on", revised.BlankEffect, StringComparison.Ordinal);
        Assert.Contains($"{uncut} ends, because fewer pieces are wanted; blank {_part} goes back to lot {Lot}", revised.BlankEffect, StringComparison.Ordinal);
        Assert.EndsWith("1 piece is wanted now instead of 3; each has its job.", revised.BlankEffect, StringComparison.Ordinal);
        Assert.Equal((1, 1, OrderState.InWork), await StandAsync());
        Assert.Contains("not wanted any more", (await OrderAsync()).History[^1].What, StringComparison.Ordinal);
        await BookHoldsAsync();
    }

    [Fact]
    public async Task No_fewer_pieces_can_be_agreed_than_are_cut()
    {
        foreach (var job in new[] { await StartAsync(), await StartAsync() })
            await StepAsync(job);

        var refusal = (await ReviseAsync(1)).Refusal!;

        Assert.Equal(("tooFew", "2 of cam 1 are shipped or cut already: at least that many stay in the order."), (refusal.Code, refusal.Reason));
        Assert.Equal((3, 2, OrderState.InWork), await StandAsync());
    }

    [Fact]
    public async Task More_pieces_wait_for_their_blanks()
    {
        await StartAsync();

        var revised = (await ReviseAsync(4)).Value!;

        Assert.EndsWith("4 pieces are wanted now instead of 3; 3 of them wait for a blank.", revised.BlankEffect, StringComparison.Ordinal);
        Assert.Equal(4, revised.Now.Quantity);
        await StartAsync();
        Assert.Equal((4, 2, OrderState.InWork), await StandAsync());
        Assert.Equal("badQuantity", (await ReviseAsync(100)).Refusal!.Code);
    }

    [Fact]
    public async Task A_cam_is_taken_out_and_put_back_while_nothing_of_it_is_cut()
    {
        await StartAsync(cam: 2);

        Assert.EndsWith("The cam is taken out of the order.", (await ReviseAsync(0, cam: 2, priceChange: -300)).Value!.BlankEffect, StringComparison.Ordinal);

        var order = await OrderAsync();
        Assert.Equal((OrderState.Accepted, 3, 900m), (order.State, order.Pieces, order.Price));
        await BookHoldsAsync();
        Assert.Equal("lastCam", (await ReviseAsync(0)).Refusal!.Code);
        Assert.True((await ReviseAsync(1, cam: 2, priceChange: 300)).Succeeded);
        await StartAsync(cam: 2);
    }

    [Fact]
    public async Task Where_all_that_is_still_wanted_has_shipped_the_order_has()
    {
        var job = await StartAsync();
        await ShipAsync(job);
        Assert.Equal("someShipped", (await ReviseAsync(3, spec: spec => spec with { LobeSeparationCamDeg = 111 })).Refusal!.Code);

        Assert.True((await ReviseAsync(0, cam: 2)).Succeeded);
        Assert.True((await OrderAsync()).IsOpen);
        Assert.True((await ReviseAsync(1)).Succeeded);

        Assert.Equal((1, 1, OrderState.Shipped), await StandAsync());
        Assert.Equal("wrongState", (await ReviseAsync(2)).Refusal!.Code);
    }

    /// <summary>Whatever is revised, begun and cut in whatever order, book, jobs and order tell one story.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public async Task Whatever_happens_the_stock_book_agrees_with_the_jobs(int seed)
    {
        var chance = new Random(seed);
        for (var act = 0; act < 16 && (await OrderAsync()).State != OrderState.Shipped; act++)
        {
            var jobs = (await _shop.Floor.JobsOfAsync(_number)).Where(job => job.IsOpen).ToList();
            if (chance.Next(3) == 0)
                await ReviseAsync(chance.Next(5));
            else if (chance.Next(2) == 0 && (await OrderAsync()).First.Waiting > 0)
                await StartAsync();
            else if (jobs.Count > 0)
                await StepAsync(jobs[chance.Next(jobs.Count)].Code);
            await BookHoldsAsync();
        }
    }

    /// <summary>Only the one lot of the part may be taken.</summary>
    private async Task OneLotAsync()
    {
        await using var db = _shop.Db();
        foreach (var lot in await db.BlankLots.Where(lot => lot.BlankPart.PartNumber == _part && lot.QuarantineReason == null).ToListAsync())
            lot.Quarantine("Not counted on here.", "Owner", TestShop.Now);
        db.Add(BlankLot.Receive(await db.BlankParts.SingleAsync(part => part.PartNumber == _part), Lot, "A1", Blanks, "Owner", TestShop.Now));
        await db.SaveChangesAsync();
    }

    /// <summary>The preview says what the revision then does.</summary>
    private async Task<Outcome<OrderRevision>> ReviseAsync(int pieces, int cam = 1, decimal priceChange = 0, Func<CamSpec, CamSpec>? spec = null)
    {
        var order = await OrderAsync();
        var terms = new RevisionTerms
        {
            Cam = cam,
            Spec = spec is null ? order.Cam(cam)!.Spec : spec(order.Cam(cam)!.Spec),
            PartNumber = _part,
            Quantity = pieces,
            PriceChange = priceChange,
            PriceReason = "pieces",
            PromisedOn = order.PromisedOn!.Value,
            AgreedBy = "Una Thornquist",
            AgreedHow = OrderChannel.Phone,
            Why = "Another number is wanted.",
        };
        var preview = await _shop.Changing.PreviewAsync(order, terms);
        var revised = await _shop.Changing.ReviseAsync(_number, order.Version, terms, "Desk");
        if (revised.Succeeded)
            Assert.Equal(revised.Value.BlankEffect, preview.Value!.BlankEffect);
        return revised;
    }

    private async Task<string> StartAsync(int cam = 1)
    {
        var order = await OrderAsync();
        return (await _shop.Allocation.StartAsync(_number, order.Version, _part, "Desk", cam: cam)).Value!.Code;
    }

    private async Task StepAsync(string code)
    {
        var stage = (await _shop.Floor.FindAsync(code))!.Current!.Stage;
        Assert.True((await _shop.Floor.CompleteAsync(code, stage, "Floor", $"{code} {stage}")).Succeeded);
    }

    private async Task ShipAsync(string code)
    {
        while ((await _shop.Floor.FindAsync(code))!.IsOpen)
            await StepAsync(code);
    }

    private async Task<(int Pieces, int Started, OrderState State)> StandAsync() => await OrderAsync() is var order ? (order.First.Quantity, order.First.Started, order.State) : default;

    private async Task<Order> OrderAsync() => (await _shop.Desk.FindAsync(_number))!;

    private async Task BookHoldsAsync()
    {
        await using var db = _shop.Db();
        var lot = await db.BlankLots.SingleAsync(lot => lot.LotNumber == Lot);
        var (order, jobs) = (await OrderAsync(), await _shop.Floor.JobsOfAsync(_number));
        Assert.Equal(jobs.Count(job => job.IsOpen && !job.IsCut), lot.Allocated);
        Assert.Equal(Blanks - jobs.Count(job => job.IsCut), lot.OnHand);
        Assert.All(order.Cams, cam => Assert.Equal(jobs.Count(job => job.OrderCamId == cam.Id && (job.IsOpen || job.ShippedAt is not null)), cam.Started));
        Assert.All(order.Cams, cam => Assert.InRange(cam.Started, 0, cam.Quantity));
        Assert.Equal(order.Cams.All(cam => cam.Shipped == cam.Quantity), order.State == OrderState.Shipped);
        Assert.True(order.State == OrderState.InWork || order.Cams.All(cam => cam.Started == cam.Shipped));
    }
}
