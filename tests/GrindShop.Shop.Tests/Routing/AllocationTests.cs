using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Routing;

public sealed class AllocationTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _one = null!, _two = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        (_one, _two) = (new TestShop(_database), new TestShop(_database, "two"));
    }

    public async Task DisposeAsync()
    {
        await _one.DisposeAsync();
        await _two.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public async Task Of_sixty_orders_that_want_twenty_blanks_twenty_get_one_each(int nodes)
    {
        var (part, lot) = await _one.StockAsync(20);
        var orders = await _one.AcceptedOrdersAsync(part.PartNumber, 60);
        TestShop[] shops = [_one, _two];

        var outcomes = await Task.WhenAll(orders.Select((order, i) => Task.Run(() => shops[i % nodes].StartAsync(order, part.PartNumber))));

        Assert.Equal(20, outcomes.Count(outcome => outcome.Succeeded));
        Assert.All(outcomes.Where(outcome => !outcome.Succeeded), outcome => Assert.Equal("noStock", outcome.Refusal!.Code));
        await using var db = _one.Db();
        Assert.Equal(20, await db.Jobs.CountAsync(job => job.BlankLotId == lot.Id));
        Assert.Equal(40, await db.Orders.CountAsync(order => orders.Select(o => o.Id).Contains(order.Id) && order.State == OrderState.Accepted));
        await BookBalancesAsync(lot.Id, 20, 20);
    }

    [Fact]
    public async Task Same_order_claimed_by_ten_at_once_gets_one_job()
    {
        var (part, lot) = await _one.StockAsync(20);
        var order = Assert.Single(await _one.AcceptedOrdersAsync(part.PartNumber, 1));

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 10).Select(i => Task.Run(() => (i % 2 == 0 ? _one : _two).StartAsync(order, part.PartNumber))));

        Assert.Single(outcomes, outcome => outcome.Succeeded);
        Assert.All(outcomes.Where(outcome => !outcome.Succeeded), outcome => Assert.Equal("stale", outcome.Refusal!.Code));
        await BookBalancesAsync(lot.Id, 20, 1);
    }

    [Fact]
    public async Task Last_blank_is_not_given_twice()
    {
        var (part, lot) = await _one.StockAsync(1);
        var orders = await _one.AcceptedOrdersAsync(part.PartNumber, 2);

        var outcomes = await Task.WhenAll(_one.StartAsync(orders[0], part.PartNumber), _two.StartAsync(orders[1], part.PartNumber));

        Assert.Equal("noStock", Assert.Single(outcomes, outcome => !outcome.Succeeded).Refusal!.Code);
        await BookBalancesAsync(lot.Id, 1, 1);
    }

    [Fact]
    public async Task Blank_that_does_not_fit_is_not_given()
    {
        var (part, lot) = await _one.StockAsync(1);
        var order = Assert.Single(await _one.AcceptedOrdersAsync(part.PartNumber, 1));
        var wrong = order.First.Answer!.Blanks.First(blank => !blank.Fits).PartNumber;

        Assert.Equal("doesNotFit", (await _one.StartAsync(order, wrong)).Refusal!.Code);
        Assert.Equal("notJudged", (await _one.StartAsync(order, "NO-SUCH")).Refusal!.Code);
        await BookBalancesAsync(lot.Id, 1, 0);
    }

    private async Task BookBalancesAsync(int lotId, int onHand, int allocated)
    {
        await using var db = _one.Db();
        var lot = await db.BlankLots.Include(lot => lot.Movements).SingleAsync(lot => lot.Id == lotId);
        Assert.Equal((onHand, allocated), (lot.OnHand, lot.Allocated));
        Assert.Equal((onHand, allocated), (lot.Movements.Sum(movement => movement.OnHandChange), lot.Movements.Sum(movement => movement.AllocatedChange)));
        Assert.Equal(allocated, lot.Movements.Count(movement => movement.Kind == StockMovementKind.Allocate));
    }
}
