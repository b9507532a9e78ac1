using GrindShop.Shop.Blanks;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Routing;

public sealed class JobFloorTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _one = null!, _two = null!;
    private Job _job = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        (_one, _two) = (new TestShop(_database), new TestShop(_database, "two"));
        var (part, _) = await _one.StockAsync(1);
        _job = (await _one.StartAsync((await _one.AcceptedOrdersAsync(part.PartNumber, 1))[0], part.PartNumber)).Value!;
    }

    public async Task DisposeAsync()
    {
        await _one.DisposeAsync();
        await _two.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task Step_done_on_several_tablets_at_once_is_done_once()
    {
        foreach (var stage in _job.Steps.Select(step => step.Stage).ToList())
        {
            var outcomes = await Task.WhenAll(Enumerable.Range(0, 6).Select(i => Task.Run(() =>
                (i % 2 == 0 ? _one : _two).Floor.CompleteAsync(_job.Code, stage, $"Grinder {i}", $"tablet-{i}-{stage}"))));

            Assert.Single(outcomes, outcome => outcome.Succeeded);
            Assert.All(outcomes.Where(outcome => !outcome.Succeeded), outcome => Assert.Contains(outcome.Refusal!.Code, new[] { "alreadyDone", "shipped" }));
        }
        var job = (await _one.Floor.FindAsync(_job.Code))!;
        Assert.Equal(job.Steps.Count + 1, job.History.Count);
        Assert.NotNull(job.ShippedAt);
    }

    [Fact]
    public async Task Command_sent_again_and_again_is_done_once_and_answers_the_same()
    {
        var stage = _job.Current!.Stage;

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(() => _one.Floor.CompleteAsync(_job.Code, stage, "Grinder", "same-key"))));

        Assert.All(outcomes, outcome => Assert.Equal(stage, outcome.Value!.Stage));
        Assert.Equal(2, (await _one.Floor.FindAsync(_job.Code))!.History.Count);
    }

    [Fact]
    public async Task Blank_leaves_the_shelf_with_the_first_step()
    {
        await _one.Floor.CompleteAsync(_job.Code, _job.Current!.Stage, "Grinder", "first");

        await using var db = _one.Db();
        var lot = await db.BlankLots.Include(lot => lot.Movements).SingleAsync(lot => lot.Id == _job.BlankLotId);
        Assert.Equal((0, 0), (lot.OnHand, lot.Allocated));
        Assert.Equal((0, 0), (lot.Movements.Sum(movement => movement.OnHandChange), lot.Movements.Sum(movement => movement.AllocatedChange)));
    }

    [Theory]
    [InlineData("{0}")]
    [InlineData("  {0}\n")]
    public async Task Job_is_found_by_its_code_however_it_is_typed(string typed) =>
        Assert.Equal(_job.Code, (await _one.Floor.FindAsync(string.Format(null, typed, _job.Code.ToLowerInvariant())))!.Code);
}
