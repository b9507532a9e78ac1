using GrindShop.Shop.Allocating;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Orders.Finding;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Orders;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using Npgsql;

namespace GrindShop.Shop.Tests.Records;

/// <summary>A web node's worth of the shop on a test database, with its own connections and the tests' clock.</summary>
internal sealed class TestShop : IAsyncDisposable
{
    public static readonly DateTimeOffset Now = new(2026, 3, 11, 15, 30, 0, TimeSpan.Zero);
    private readonly ServiceProvider _services;
    private readonly string _connectionString;

    public TestShop(TestDatabase database, string node = "one", Action<IServiceCollection>? with = null)
    {
        _connectionString = new NpgsqlConnectionStringBuilder(database.ConnectionString) { ApplicationName = node, Timeout = 60 }.ToString();
        var services = new ServiceCollection().AddLogging().AddSingleton<TimeProvider>(Clock);
        with?.Invoke(services);
        _services = services.AddShop(_connectionString).BuildServiceProvider();
    }

    public FakeTimeProvider Clock { get; } = new(Now);

    public IDbContextFactory<ShopDb> Factory => Of<IDbContextFactory<ShopDb>>();

    public Catalog Catalog => Of<Catalog>();

    public RuleBook Rules => Of<RuleBook>();

    public PriceBook Prices => Of<PriceBook>();

    public ShopSettingsBook ShopBook => Of<ShopSettingsBook>();

    public OrderDesk Desk => Of<OrderDesk>();

    public CustomerDesk Customer => Of<CustomerDesk>();

    public SpecIntake Intake => Of<SpecIntake>();

    public CallerBook Callers => Of<CallerBook>();

    public CareDesk Care => Of<CareDesk>();

    public InboxBook Inbox => Of<InboxBook>();

    public OrderSearch Search => Of<OrderSearch>();

    public Receiving Receiving => Of<Receiving>();

    public StockRoom StockRoom => Of<StockRoom>();

    public Allocation Allocation => Of<Allocation>();

    public OrderChanging Changing => Of<OrderChanging>();

    public JobFloor Floor => Of<JobFloor>();

    public NextBest NextBest => Of<NextBest>();

    public BatchAllocation Batch => Of<BatchAllocation>();

    public ScrapDesk Scrapping => Of<ScrapDesk>();

    public Purchasing Purchasing => Of<Purchasing>();

    public BuyingBook BuyingBook => Of<BuyingBook>();

    public BuyingTerms Terms => Of<BuyingTerms>();
    public Postman Postman => Of<Postman>();

    public Outbox Outbox => Of<Outbox>();

    public ChangeListener Listener => Of<ChangeListener>();

    public ShopDb Db() => Factory.CreateDbContext();

    public async ValueTask DisposeAsync()
    {
        await _services.DisposeAsync();
        await using var pooled = new NpgsqlConnection(_connectionString);
        NpgsqlConnection.ClearPool(pooled);
    }

    /// <summary>A part of the demo with nothing on its shelf but one new lot, and accepted orders for the very cam it was milled for.</summary>
    public async Task<(BlankPart Part, BlankLot Lot)> StockAsync(int blanks)
    {
        await using var db = Db();
        var lots = db.BlankLots;
        var part = await db.BlankParts.Include(part => part.EngineFamily)
            .FirstAsync(part => part.Form == BlankForm.Milled && !lots.Any(lot => lot.BlankPartId == part.Id && lot.OnHand > lot.Allocated));
        var lot = BlankLot.Receive(part, "TEST-1", "A1", blanks, "Owner", Now);
        db.Add(lot);
        await db.SaveChangesAsync();
        return (part, lot);
    }

    public async Task<List<Order>> AcceptedOrdersAsync(string partNumber, int count, int quantity = 1)
    {
        var grind = Shelf.Nominal(Shelf.Blank(partNumber));
        var answer = await Catalog.JudgeAsync(grind);
        await using var db = Db();
        var customer = await db.Customers.FirstAsync();
        var orders = new List<Order>();
        for (var i = 0; i < count; i++)
            orders.Add(SomeOrders.Accepted(await db.NextOrderNumbersAsync(default), answer, partNumber, customer, quantity));
        db.AddRange(orders);
        await db.SaveChangesAsync();
        return orders;
    }

    public Task<Outcome<Job>> StartAsync(Order order, string partNumber) => Allocation.StartAsync(order.Number, order.Version, partNumber, "Desk");

    public T Of<T>() where T : notnull => _services.GetRequiredService<T>();
}
