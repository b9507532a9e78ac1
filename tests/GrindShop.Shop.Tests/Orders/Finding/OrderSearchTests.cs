using GrindShop.Shop.Orders;
using GrindShop.Shop.Orders.Finding;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace GrindShop.Shop.Tests.Orders.Finding;

public sealed class OrderSearchTests(SearchedShop shop) : IClassFixture<SearchedShop>
{
    [Theory]
    [InlineData("Lena Rushbourne", "Lena Rushbourne")]
    [InlineData("rushborne", "Lena Rushbourne")]
    [InlineData("corin.orlowe@example.com", "Corin Orlowe")]
    [InlineData("5555550128", "Corin Orlowe")]
    [InlineData("555-0128", "Corin Orlowe")]
    [InlineData("(555) 555 0128", "Corin Orlowe")]
    [InlineData("salt lick machine", "Saltlick Machine")]
    public async Task Customer_is_found_by_name_address_or_phone_in_any_spelling(string question, string customer) =>
        Assert.Equal(customer, (await shop.Search.FindAsync(question))[0].Customer);

    [Theory]
    [InlineData("C1015")]
    [InlineData("c1015")]
    [InlineData("\"Engine sold\"")]
    public async Task Order_is_found_by_its_number_and_by_words_of_its_history(string question)
    {
        var found = await shop.Search.FindAsync(question);

        Assert.Contains(found, order => order.Number == "C1015");
        Assert.Contains(found[0].Excerpt, piece => piece.IsHit);
    }

    [Fact]
    public async Task Job_lot_part_and_quote_lead_to_the_order()
    {
        await using var db = shop.Shop.Db();
        var order = await db.Orders.AsNoTracking().SingleAsync(order => order.Number == "C1190");
        var quote = await db.Orders.Where(one => one.Id == order.Id).SelectMany(one => one.Quotes).Select(one => one.Number).FirstAsync();

        Assert.Equal("C1190", (await shop.Search.FindAsync(quote))[0].Number);
        Assert.Equal("C1001", (await shop.Search.FindAsync("J1001"))[0].Number);
        Assert.Contains(await shop.Search.FindAsync("RV8R-AD-05"), found => found.Number == "C1001");
    }

    [Fact]
    public async Task What_is_written_is_found_at_once()
    {
        var taken = await shop.Shop.Intake.TakeAsync(
            new Enquiry
            {
                SubmitKey = "search",
                Channel = OrderChannel.Phone,
                Spec = new CamSpec { Notes = "for the yellow swamp buggy" },
                Contact = new Contact { Name = "Wilma Quarrington", Phone = "555-555-9731" },
            },
            "Imka");

        Assert.Equal(taken.Order!.Number, Assert.Single(await shop.Search.FindAsync("swamp yellow")).Number);
        Assert.Equal(taken.Order.Number, (await shop.Search.FindAsync("quarington"))[0].Number);
        await shop.Shop.Desk.DeclineAsync(taken.Order.Number, (await shop.Shop.Desk.FindAsync(taken.Order.Number))!.Version, "no pontoon allowed", "Imka");
        Assert.Equal(taken.Order.Number, Assert.Single(await shop.Search.FindAsync("pontoon")).Number);
    }

    [Theory]
    [InlineData("")]
    [InlineData("'")]
    [InlineData("'; DROP TABLE orders; --")]
    [InlineData("%%%%")]
    [InlineData("____")]
    [InlineData("\\\\\\")]
    [InlineData("\"\"\"((( & | ! :* <->")]
    [InlineData("a\0b\ud800c")]
    [InlineData("\ue000\ue001")]
    public async Task Hostile_questions_find_nothing_and_break_nothing(string question) => Assert.Empty(await shop.Search.FindAsync(question));

    [Fact]
    public async Task Endless_question_is_cut() => Assert.Empty(await shop.Search.FindAsync(new string('q', 1_000_000)));

    /// <summary>On many orders every way of finding one goes through its index.</summary>
    [Fact]
    public async Task Indexes_are_used_on_a_large_table()
    {
        await using var db = shop.Shop.Db();
        await using var transaction = await db.Database.BeginTransactionAsync();
        await db.Database.ExecuteSqlRawAsync(ManyOrders);
        await db.Database.ExecuteSqlRawAsync("ANALYZE order_search");

        var plan = await PlanAsync(db, OrderSearch.Sql("rushborne", "%5550128%", "%rushborne%"));

        Assert.True(plan.Contains("ix_order_search_head", StringComparison.Ordinal), plan);
        Assert.Contains("ix_order_search_document", plan, StringComparison.Ordinal);
        Assert.Contains("ix_order_search_digits", plan, StringComparison.Ordinal);
        Assert.DoesNotContain("Seq Scan on order_search", plan, StringComparison.Ordinal);
        await transaction.RollbackAsync();
    }

    /// <summary>Copies of an order under 20 000 new numbers.</summary>
    private const string ManyOrders = """
        SET LOCAL session_replication_role = replica;
        INSERT INTO orders SELECT (jsonb_populate_record(o, jsonb_build_object('id', 100000 + n, 'number', 'T' || n, 'tracking_code', 'T' || n, 'submit_key', 'T' || n))).*
            FROM orders o, generate_series(1, 20000) n WHERE o.id = (SELECT min(id) FROM orders);
        INSERT INTO order_search (order_id, head, body, digits)
            SELECT 100000 + n, md5(n::text) || ' T' || n, md5((n * 7)::text) || ' ' || md5((n * 11)::text), (5550000000 + n * 13)::text FROM generate_series(1, 20000) n;
        """;

    private static async Task<string> PlanAsync(ShopDb db, FormattableString sql)
    {
        await using var command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = "EXPLAIN " + string.Format(null, sql.Format, [.. Enumerable.Range(1, sql.ArgumentCount).Select(i => (object)$"${i}")]);
        foreach (var value in sql.GetArguments())
            command.Parameters.Add(new NpgsqlParameter { Value = value });
        var lines = new List<string>();
        await using var reader = await command.ExecuteReaderAsync();
        while (await reader.ReadAsync())
            lines.Add(reader.GetString(0));
        return string.Join('\n', lines);
    }
}

public sealed class SearchedShop : IAsyncLifetime
{
    private TestDatabase _database = null!;

    internal TestShop Shop { get; private set; } = null!;

    internal OrderSearch Search => Shop.Search;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        Shop = new TestShop(_database);
    }

    public async Task DisposeAsync()
    {
        await Shop.DisposeAsync();
        await _database.DisposeAsync();
    }
}
