using GrindShop.Shop.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace GrindShop.Shop.Tests.Records;

/// <summary>What stood in the database before a migration still stands there after it.</summary>
public class CarryOverTests
{
    private const string OneOrderOfBefore = """
        INSERT INTO customers (id, name, phone, since) VALUES (7, 'Una Thornquist', '555 555 0142', now());
        INSERT INTO orders (id, number, tracking_code, submit_key, submit_digest, channel, state, customer_id, contact, spec, verdict, quoted_part_number, price_lines, price, received_at, changes)
        VALUES (7, 'C1007', 'TRACK', 'key', 'digest', 'Web', 'Quoted', 7, '{}', '{"use":"street"}', 'FromStock', 'RV8R-AD-05', '[{"code":"base","text":"Grinding","amount":300.00},{"code":"blank","text":"Blank","amount":112.50}]', 412.50, '2026-03-01T09:00Z', 2);
        INSERT INTO order_events (order_id, kind, by, at, what) VALUES (7, 'Received', 'Una', '2026-03-01T09:00Z', 'Received.'), (7, 'Quoted', 'Petra', '2026-03-03T09:00Z', 'Priced.');
        """;

    private static readonly TemplateDatabase Initial = new("initial", async connection =>
    {
        await using var db = Db(connection);
        await db.GetService<IMigrator>().MigrateAsync("Initial");
        await Sql.RunAsync(connection, OneOrderOfBefore);
    });

    [Fact]
    public async Task Order_of_one_cam_keeps_its_specification_verdict_blank_and_age()
    {
        await using var database = await Initial.CopyAsync();
        await using var db = Db(database.ConnectionString);

        await db.Database.MigrateAsync();

        var order = await db.Set<Shop.Orders.Order>().Include(one => one.Quotes).SingleAsync();
        Assert.Equal(("street", Shop.Feasibility.Verdict.FromStock, "RV8R-AD-05"), (order.First.Spec.Use, order.First.Verdict!.Value, order.First.QuotedPartNumber));
        var quote = order.CurrentQuote!;
        Assert.Equal(("Q1007-1", "Petra", 412.50m), (quote.Number, quote.By, quote.Total));
        Assert.Equal(412.50m, quote.Charged.Sum(line => line.Amount));
        Assert.All(quote.Lines, line => Assert.False(line.NeedsReason));
        Assert.Equal("RV8R-AD-05", Assert.Single(quote.Cams).PartNumber);
        Assert.Equal("555 555 0142", order.Contact.Phone);
        Assert.Equal((1, 412.50m, new DateTimeOffset(2026, 3, 3, 9, 0, 0, TimeSpan.Zero)), (order.First.Quantity, order.Price, order.StateSince));
    }

    private static ShopDb Db(string connection) => new(new DbContextOptionsBuilder<ShopDb>().UseShop(connection).Options);
}
