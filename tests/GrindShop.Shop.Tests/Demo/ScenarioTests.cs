using GrindShop.Shop.Blanks;
using GrindShop.Shop.Demo;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Orders;
using GrindShop.Shop.People;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using GrindShop.Testing;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Demo;

public sealed class ScenarioTests : IAsyncLifetime
{
    private static readonly DateTimeOffset Now = new(2026, 3, 11, 15, 30, 0, TimeSpan.Zero);
    private static readonly TemplateDatabase Loaded = new("scenario", connection => Migrate.UnderLockAsync(connection, LoadAsync));
    private static readonly TemplateDatabase Empty = new("empty_shop", connection => Migrate.UnderLockAsync(connection, _ => Task.CompletedTask));
    private TestDatabase _database = null!;

    public async Task InitializeAsync() => _database = await Loaded.CopyAsync();

    public async Task DisposeAsync() => await _database.DisposeAsync();

    [Fact]
    public async Task Orders_and_jobs_stand_where_the_files_say()
    {
        await using var db = Db();
        var orders = await db.Orders.ToDictionaryAsync(order => order.Number);
        var jobs = (await db.Jobs.Include(job => job.Steps).ToListAsync()).ToLookup(job => job.OrderId);

        foreach (var row in SeedFiles.Scenario.Orders)
        {
            var order = orders[$"C{row.Order}"];
            Assert.Equal((row.State, row.Channel), (order.State, order.Channel));
            Assert.Equal(row.At, jobs[order.Id].SingleOrDefault()?.Current?.Stage);
            Assert.Equal(row.State is OrderState.InWork or OrderState.Shipped, jobs[order.Id].Count() == 1);
        }
    }

    [Fact]
    public async Task Histories_run_forward_and_end_before_now()
    {
        await using var db = Db();
        var orders = await db.Orders.Include(order => order.History.OrderBy(line => line.Id)).ToListAsync();
        var jobs = await db.Jobs.Include(job => job.History.OrderBy(line => line.Id)).ToListAsync();

        foreach (var order in orders)
        {
            Assert.Equal(order.History.Select(line => line.At).Order(), order.History.Select(line => line.At));
            Assert.True(order.History[^1].At <= Now);
        }
        Assert.All(jobs, job => Assert.Equal(job.History.Select(line => line.At).Order(), job.History.Select(line => line.At)));
    }

    [Fact]
    public async Task Stock_is_the_sum_of_its_movements_and_was_never_short()
    {
        await using var db = Db();
        foreach (var lot in await db.BlankLots.Include(lot => lot.Movements.OrderBy(movement => movement.At).ThenBy(movement => movement.Id)).ToListAsync())
        {
            Assert.Equal((lot.OnHand, lot.Allocated), (lot.Movements.Sum(movement => movement.OnHandChange), lot.Movements.Sum(movement => movement.AllocatedChange)));
            var free = 0;
            Assert.All(lot.Movements, movement => Assert.True((free += movement.OnHandChange - movement.AllocatedChange) >= 0));
        }
        var jobs = await db.Jobs.CountAsync(job => job.BlankLotId != null);
        Assert.Equal(jobs, await db.StockMovements.CountAsync(movement => movement.Kind == StockMovementKind.Allocate));
    }

    [Fact]
    public async Task Shelf_has_parts_with_none_with_one_and_with_several_lots()
    {
        await using var db = Db();
        var lots = db.BlankLots;
        var parts = await db.BlankParts.Select(part => new
        {
            Lots = lots.Count(lot => lot.BlankPartId == part.Id),
            Free = lots.Where(lot => lot.BlankPartId == part.Id).Sum(lot => lot.OnHand - lot.Allocated),
        }).ToListAsync();

        Assert.Contains(parts, part => part.Free == 0);
        Assert.Contains(parts, part => part.Free == 1);
        Assert.Contains(parts, part => part.Lots >= 3);
    }

    [Fact]
    public async Task Some_orders_shipped_late_and_some_in_work_are_late_now()
    {
        await using var db = Db();
        var today = DateOnly.FromDateTime(Now.UtcDateTime);
        var shipped = await db.Jobs.Where(job => job.ShippedAt != null).ToListAsync();
        var late = shipped.Count(job => DateOnly.FromDateTime(job.ShippedAt!.Value.UtcDateTime) > job.DueOn);

        Assert.InRange(late / (double)shipped.Count, .05, .35);
        Assert.True(await db.Jobs.AnyAsync(job => job.ShippedAt == null && job.DueOn < today));
    }

    [Fact]
    public async Task Not_grindable_orders_are_declined_and_the_others_have_a_blank_that_fits()
    {
        await using var db = Db();
        var orders = await db.Orders.ToListAsync();

        Assert.True(orders.Count(order => order.First.Verdict == Shop.Feasibility.Verdict.NotGrindable) >= 3);
        Assert.All(orders.Where(order => order.First.Verdict == Shop.Feasibility.Verdict.NotGrindable), order => Assert.Equal(OrderState.Declined, order.State));
        Assert.All(orders.Where(order => order.First.QuotedPartNumber is not null), order => Assert.True(order.Price > 0));
    }

    [Fact]
    public async Task People_sign_in_with_the_passwords_of_the_file()
    {
        await using var db = Db();
        foreach (var person in SeedFiles.Scenario.People)
        {
            var user = await db.Users.SingleAsync(user => user.NormalizedUserName == person.UserName.ToUpperInvariant());
            Assert.NotEqual(PasswordVerificationResult.Failed, new PasswordHasher<ShopUser>().VerifyHashedPassword(user, user.PasswordHash!, person.Password));
            Assert.Equal(person.Role, await (from link in db.UserRoles join role in db.Roles on link.RoleId equals role.Id where link.UserId == user.Id select role.Name).SingleAsync());
        }
    }

    [Fact]
    public async Task Second_load_changes_nothing()
    {
        await using var db = Db();
        var lines = await db.Set<OrderEvent>().CountAsync();

        var load = await Scenario.TryLoadAsync(db, SeedFiles.Folder, Now);

        Assert.False(load.Loaded);
        Assert.Empty(load.Problems);
        Assert.Equal(lines, await db.Set<OrderEvent>().CountAsync());
    }

    [Fact]
    public async Task Bad_files_stop_the_load_and_leave_the_shop_empty()
    {
        await using var empty = await Empty.CopyAsync();
        await using var db = Db(empty);
        using var folder = new SeedCopy();
        folder.KeepLines("orders.csv", 2);
        folder.Replace("orders.csv", ",RV8R-AD-05,", ",RV8R-HI-01,");

        var error = await Assert.ThrowsAsync<ScenarioException>(() => Scenario.LoadAsync(db, folder.Path));

        Assert.Matches(@"\n  orders\.csv, line 2, blankPart: Blank RV8R-HI-01 cannot become this cam: The line contact of a roller", error.Message);
        Assert.False(await db.Customers.AnyAsync());
        Assert.False(await db.EngineFamilies.AnyAsync());
    }

    private ShopDb Db() => Db(_database);

    private static ShopDb Db(TestDatabase database) => new(new DbContextOptionsBuilder<ShopDb>().UseShop(database.ConnectionString).Options);

    private static async Task LoadAsync(ShopDb db)
    {
        var load = await Scenario.TryLoadAsync(db, SeedFiles.Folder, Now);
        Assert.Empty(load.Problems.Select(problem => problem.ToString()));
        Assert.True(load.Loaded);
    }
}
