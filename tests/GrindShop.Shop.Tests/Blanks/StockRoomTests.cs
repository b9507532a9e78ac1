using CsCheck;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Blanks;

public sealed class StockRoomTests : IAsyncLifetime
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

    [Fact]
    public async Task Any_history_in_the_database_agrees_with_the_model_and_the_book() => await Gen.Select(Gen.Int[1, 5], LotAct.Any.Array[1, 25]).SampleAsync(
        async (quantity, acts) =>
        {
            var (number, model) = ((await ReceivedAsync(quantity)).LotNumber, new LotModel(quantity));
            foreach (var act in acts)
            {
                await using var db = _shop.Db();
                await using var transaction = await db.Database.BeginTransactionAsync();
                var lot = (await db.LockLotAsync(number, default))!;
                Assert.Equal(act.Do(model), act.Do(lot).Succeeded);
                await db.SaveChangesAsync();
                await transaction.CommitAsync();
            }
            var read = (await _shop.StockRoom.FindAsync(number))!;
            Assert.Equal((model.OnHand, model.Jobs.Count, model.Available), (read.OnHand, read.Allocated, read.Available));
            Assert.Equal((read.OnHand, read.Allocated), (read.Movements.Sum(line => line.OnHandChange), read.Movements.Sum(line => line.AllocatedChange)));
        }, iter: 15, threads: 1);

    [Theory]
    [InlineData("UPDATE blank_lots SET on_hand = on_hand + 1 WHERE id = (SELECT min(id) FROM blank_lots)")]
    [InlineData("UPDATE blank_lots SET quarantine_reason = 'looks odd' WHERE id = (SELECT min(id) FROM blank_lots)")]
    [InlineData("INSERT INTO stock_movements (blank_lot_id, kind, on_hand_change, allocated_change, by, at, reason) SELECT min(id), 'Adjust', 1, 0, 'x', now(), 'x' FROM blank_lots")]
    public async Task The_database_refuses_counters_that_are_not_the_sums_of_the_book(string statement) =>
        Assert.Equal("23514", (await Assert.ThrowsAsync<Npgsql.PostgresException>(() => Sql.RunAsync(_database.ConnectionString, statement))).SqlState);

    [Fact]
    public async Task Two_who_count_at_once_leave_one_line_and_the_second_is_told()
    {
        var lot = await ReceivedAsync(5);
        var seen = lot.Movements[^1].Id;

        var outcomes = await Task.WhenAll(
            _shop.StockRoom.CountAsync(new(lot.LotNumber, seen, "Ann", "a"), 4, "one was broken"),
            _shop.StockRoom.CountAsync(new(lot.LotNumber, seen, "Bo", "b"), 6, "one was found"));

        var stale = Assert.Single(outcomes, outcome => !outcome.Succeeded).Refusal!;
        Assert.Equal("stale", stale.Code);
        var read = (await _shop.StockRoom.FindAsync(lot.LotNumber))!;
        Assert.Equal(2, read.Movements.Count);
        Assert.Contains(read.Movements[^1].By, stale.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_repeated_command_is_done_once()
    {
        var lot = await ReceivedAsync(5);
        var command = new LotCommand(lot.LotNumber, lot.Movements[^1].Id, "Ann", "same");

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => _shop.StockRoom.ScrapAsync(command, 1, "cracked")));

        Assert.All(outcomes, outcome => Assert.True(outcome.Succeeded));
        Assert.Equal(4, (await _shop.StockRoom.FindAsync(lot.LotNumber))!.OnHand);
    }

    [Fact]
    public async Task A_repeated_receipt_answers_with_the_same_lot()
    {
        var lots = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => ReceivedAsync(3, "once")));

        Assert.Single(lots.Select(lot => lot.LotNumber).Distinct());
        await using var db = _shop.Db();
        var lot = await db.BlankLots.Include(lot => lot.Supplier).SingleAsync(lot => lot.ReceiptKey == "once");
        Assert.Equal(("88-1207", "C-55", "P1004 line 2", 3), (lot.HeatNumber, lot.Certificate, lot.PurchaseLine, lot.OnHand));
        Assert.NotNull(lot.Supplier);
    }

    [Theory]
    [InlineData("NO-SUCH", 3, "A1", null, "unknownPart")]
    [InlineData("RV8R-516-08", 0, "A1", null, "badQuantity")]
    [InlineData("RV8R-516-08", 3, " ", null, "noLocation")]
    [InlineData("RV8R-516-08", 3, "A1", "NOBODY", "unknownSupplier")]
    public async Task What_cannot_be_received_is_refused(string part, int quantity, string location, string? supplier, string code)
    {
        var receipt = new Receipt { PartNumber = part, Quantity = quantity, Location = location, SupplierCode = supplier, Key = "k" };
        Assert.Equal(code, (await _shop.Receiving.ReceiveAsync(receipt, "Desk")).Refusal!.Code);
    }

    [Fact]
    public async Task A_heat_number_that_has_no_room_is_refused_and_one_that_just_fits_is_kept()
    {
        var lot = await ReceivedAsync(1);
        Task<Outcome<StockMovement>> Correct(string heat, string key) => _shop.StockRoom.CorrectAsync(new(lot.LotNumber, null, "Ann", key), heat, "C-55", "misread");

        Assert.Equal("tooLong", (await Correct(new string('8', 300), "a")).Refusal!.Code);
        Assert.True((await Correct(new string('8', BlankLot.LongestHeatNumber), "b")).Succeeded);

        Assert.Equal(BlankLot.LongestHeatNumber, (await _shop.StockRoom.FindAsync(lot.LotNumber))!.HeatNumber.Length);
    }

    [Fact]
    public async Task Quarantined_blanks_are_not_offered()
    {
        var (part, lot) = await _shop.StockAsync(2);
        await _shop.StockRoom.QuarantineAsync(new(lot.LotNumber, null, "Owner", "q"), "Certificate missing.");

        Assert.DoesNotContain(part.Id, (await _shop.Catalog.AvailableAsync()).Keys);
        var order = Assert.Single(await _shop.AcceptedOrdersAsync(part.PartNumber, 1));
        Assert.Equal("noStock", (await _shop.StartAsync(order, part.PartNumber)).Refusal!.Code);
    }

    private async Task<BlankLot> ReceivedAsync(int quantity, string? key = null)
    {
        var receipt = new Receipt
        {
            PartNumber = "RV8R-516-08",
            Quantity = quantity,
            Location = "A1",
            HeatNumber = "88-1207",
            Certificate = "C-55",
            PurchaseLine = "P1004 line 2",
            Key = key ?? Guid.NewGuid().ToString("N"),
        };
        return (await _shop.Receiving.ReceiveAsync(receipt, "Desk")).Value!;
    }
}
