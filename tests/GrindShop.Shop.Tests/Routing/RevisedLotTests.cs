using System.Text.Json;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Orders;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Routing;

/// <summary>A revision while a job holds a blank from the only lot of its part, which measures less than the catalog says.</summary>
public sealed class RevisedLotTests : IAsyncLifetime
{
    /// <summary>The demo's blank that was milled for <see cref="Wishes.Street"/>, with a case that ends.</summary>
    private const string Part = "RV8R-515-07";

    private TestDatabase _database = null!;
    private TestShop _shop = null!;
    private Job _job = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
        await LeaveOneLesserBlankAsync();
        var order = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("key"), "Una")).Order!;
        order = (await _shop.Desk.QuoteAsync(order.Number, order.Version, Part, SomeOrders.Lines, "Desk")).Value!;
        order = (await _shop.Desk.AcceptAsync(order.Number, order.Version, SomeOrders.Today.AddDays(20), "Desk")).Value!;
        _job = (await _shop.StartAsync(order, Part)).Value!;
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task The_blank_goes_on_to_another_grind_with_what_its_own_lot_gives_and_back_to_the_shelf_where_it_has_not_the_metal()
    {
        var wentOn = 0;
        for (var separation = 111.5; (await JobAsync()).IsOpen; separation -= .5)
        {
            var order = await OrderAsync();
            var terms = Terms(order) with { Spec = order.First.Spec with { LobeSeparationCamDeg = separation } };
            var preview = (await _shop.Changing.PreviewAsync(order, terms)).Value!;
            var outcome = await _shop.Changing.ReviseAsync(order.Number, order.Version, terms, "Desk");
            Assert.True(outcome.Succeeded, $"{Part} {separation} {outcome.Refusal?.Reason} {(await JobAsync()).Fit}");
            var revised = outcome.Value!;

            var (job, ofItsLot) = (await JobAsync(), await OfItsLotAsync(revised.Now.Grind!));
            Assert.Equal(revised.BlankEffect, preview.BlankEffect);
            Assert.Equal(ofItsLot.Usable, job.IsOpen);
            Assert.Equal(job.IsOpen ? 1 : 0, await AllocatedAsync());
            Assert.True(revised.Now.Fit!.IntakeBaseCircleDiameterIn > ofItsLot.IntakeBaseCircleDiameterIn, "The catalog's blank has more metal than the one in hand.");
            if (job.IsOpen)
            {
                wentOn++;
                Assert.Equal(Figures(ofItsLot), Figures(job.Fit!));
            }
            else
                Assert.StartsWith($"{job.Code} ends, because the new grind does not come out of the lot it holds (From lot {job.BlankLot!.LotNumber}: measured stock", revised.BlankEffect, StringComparison.Ordinal);
        }
        Assert.True(wentOn > 2);
        Assert.Equal((OrderState.Accepted, 1), ((await OrderAsync()).State, (await OrderAsync()).First.Waiting));
    }

    [Fact]
    public async Task A_note_leaves_the_figures_of_the_blank_in_hand_as_they_are()
    {
        var before = Figures((await JobAsync()).Fit!);
        Assert.True((await _shop.Floor.CompleteAsync(_job.Code, Stage.Grind, "Floor", "cut")).Succeeded);
        var order = await OrderAsync();

        var revised = await _shop.Changing.ReviseAsync(order.Number, order.Version, Terms(order) with { Spec = order.First.Spec with { Notes = "Ship to the track." } }, "Desk");

        Assert.NotEqual(before, Figures(revised.Value!.Now.Fit!));
        Assert.Equal(before, Figures((await JobAsync()).Fit!));
    }

    private async Task LeaveOneLesserBlankAsync()
    {
        await using var db = _shop.Db();
        var part = await db.BlankParts.SingleAsync(part => part.PartNumber == Part);
        foreach (var lot in await db.BlankLots.Where(lot => lot.BlankPartId == part.Id && lot.OnHand > lot.Allocated).ToListAsync())
            lot.Quarantine("Not counted on here.", "Owner", TestShop.Now);
        var lesser = BlankLot.Receive(part, "LESS-1", "A1", 1, "Owner", TestShop.Now);
        db.Add(lesser);
        await db.SaveChangesAsync();
        Assert.True((await _shop.StockRoom.MeasureAsync(new("LESS-1", null, "Ann", "sample"), new SampleFigures(1, null, .125, part.Nominal!.StockIn - .004, null))).Succeeded);
    }

    private async Task<BlankFit> OfItsLotAsync(GrindSpec grind)
    {
        await using var db = _shop.Db();
        var lot = await db.BlankLots.Include(lot => lot.BlankPart).SingleAsync(lot => lot.Id == _job.BlankLotId);
        return (await _shop.Catalog.JudgeLotAsync(db, grind, lot))!;
    }

    private async Task<int> AllocatedAsync()
    {
        await using var db = _shop.Db();
        return (await db.BlankLots.SingleAsync(lot => lot.Id == _job.BlankLotId)).Allocated;
    }

    /// <summary>What the floor grinds to; whether a second blank is in stock says nothing about the one in hand.</summary>
    private static string Figures(BlankFit fit) => JsonSerializer.Serialize(fit with { InStock = true, LeadTimeDays = 0 }, ShopJson.Options);

    private async Task<Order> OrderAsync() => (await _shop.Desk.FindAsync(_job.Order.Number))!;

    private async Task<Job> JobAsync() => (await _shop.Floor.FindAsync(_job.Code))!;

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
