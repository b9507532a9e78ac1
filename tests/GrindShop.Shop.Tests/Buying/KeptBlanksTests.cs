using CsCheck;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Buying;

/// <summary>Demand is what jobs took and kept.</summary>
public sealed class KeptBlanksTests : IAsyncLifetime
{
    private const string By = "Owner", Why = "customer called it off";
    private const int Weeks = 12;

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

    /// <summary>A job in one week, and in how many weeks its blank goes back: 0 for the same week; null for never.</summary>
    private static readonly Gen<(int Week, int? BackAfter)> Job = Gen.Select(Gen.Int[0, Weeks - 1], Gen.Int[-4, 6], (week, after) => (week, after < 0 ? (int?)null : after));

    /// <summary>Each is played against a plain count: one blank in the week of each job that kept its blank, whatever else came and went.</summary>
    [Fact]
    public void Any_history_counts_each_kept_blank_once_in_its_week_and_no_blank_given_back() => Job.Array[0, 30].Sample(jobs =>
    {
        var lot = Play(SomePurchases.Part, jobs, "R");
        var counted = KeptBlanks.Of(lot.Movements).CountBy(line => Week(line.At)).ToDictionary();
        Assert.Equal(Counted(jobs), Enumerable.Range(0, Weeks).Select(week => counted.GetValueOrDefault(week)));
    });

    [Fact]
    public void A_job_that_takes_again_what_it_gave_back_counts_once_and_a_release_of_an_older_blank_takes_nothing_away()
    {
        var lot = BlankLot.Receive(SomePurchases.Part, "L1", "A1", 5, By, At(0));
        lot.Allocate("J1", By, At(1));
        lot.Release("J1", By, At(2), Why);
        lot.Allocate("J1", By, At(3));
        Assert.Equal([3], KeptBlanks.Of(lot.Movements).Select(line => Week(line.At)));

        lot.Allocate("J2", By, At(4));
        lot.Release("J1", By, At(5), Why);
        Assert.Equal([4], KeptBlanks.Of(lot.Movements.Skip(4)).Select(line => Week(line.At)));
    }

    [Fact]
    public async Task The_books_of_any_history_say_the_same()
    {
        var unwanted = (await _shop.BuyingBook.NeedsAsync()).Where(need => need.Stock.Waiting == 0).Select(need => need.Part.PartNumber).ToList();
        List<(BlankPart Part, (int, int?)[] Jobs)> played;
        await using (var db = _shop.Db())
        {
            var lots = db.BlankLots;
            var parts = await db.BlankParts.Where(part => unwanted.Contains(part.PartNumber) && part.Supersedes == null && !lots.Any(lot => lot.BlankPartId == part.Id)).ToListAsync();
            Assert.NotEmpty(parts);
            played = [.. parts.Zip(Job.Array[10, 30].Array[parts.Count].Single())];
            db.AddRange(played.Select((one, i) => Play(one.Part, one.Jobs, $"T{i}")));
            await db.SaveChangesAsync();
        }
        var needs = (await _shop.BuyingBook.NeedsAsync()).ToDictionary(need => need.Part.PartNumber);
        Assert.All(played, one => Assert.Equal(Counted(one.Jobs), needs[one.Part.PartNumber].History.Weeks));
    }

    private static IEnumerable<int> Counted((int Week, int? BackAfter)[] jobs) =>
        Enumerable.Range(0, Weeks).Select(week => jobs.Count(job => job.Week == week && !(job.Week + job.BackAfter < Weeks)));

    /// <summary>Takes and gives back blanks of a new lot, week by week; week 0 is the oldest.</summary>
    private static BlankLot Play(BlankPart part, (int Week, int? BackAfter)[] jobs, string lots)
    {
        var lot = BlankLot.Receive(part, $"{lots}-1", "A1", 40, By, TestShop.Now.AddDays(-7 * Weeks));
        for (var week = 0; week < Weeks; week++)
        {
            foreach (var (i, _) in jobs.Index().Where(job => job.Item.Week == week))
                Assert.True(lot.Allocate($"{lots}J{i}", By, At(week)).Succeeded);
            foreach (var (i, _) in jobs.Index().Where(job => job.Item.Week + job.Item.BackAfter == week))
                Assert.True(lot.Release($"{lots}J{i}", By, At(week), Why).Succeeded);
        }
        return lot;
    }

    private static DateTimeOffset At(int week) => TestShop.Now.AddDays(-7 * (Weeks - week) + 1);

    private static int Week(DateTimeOffset at) => (int)Math.Floor((at - TestShop.Now).TotalDays / 7) + Weeks;
}
