using GrindShop.Shop.Orders;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;

namespace GrindShop.Shop.Tests.Orders.Care;

public sealed class ClosedPagesTests : IAsyncLifetime
{
    private const int Some = 230;

    private TestDatabase _database = null!;
    private TestShop _shop = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Empty.CopyAsync();
        _shop = new TestShop(_database);
        await using var db = _shop.Db();
        var customer = new Customer { Name = "Una Thornquist", Email = "una@example.com", Since = TestShop.Now };
        for (var i = 0; i < Some; i++)
        {
            var order = Order.Receive(OrderNumbers.Next(5000 + i), SomeOrders.Enquiry($"closed-{i}"), customer, SomeOrders.Answer, "Una", TestShop.Now);
            Assert.True(order.Decline("No blank.", "Desk", TestShop.Now.AddMinutes(i % 7)).Succeeded);
            db.Add(order);
        }
        await db.SaveChangesAsync();
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task Hundreds_of_closed_orders_are_read_page_by_page_each_once_the_last_closed_first()
    {
        var first = await _shop.Inbox.ClosedAsync(1);
        var rows = new List<InboxRow>();
        for (var page = 1; page <= first.Pages; page++)
            rows.AddRange((await _shop.Inbox.ClosedAsync(page)).Rows);

        Assert.Equal((Some, 5, InboxBook.PageLength), (first.Total, first.Pages, first.Rows.Count));
        Assert.Equal(Some, rows.Select(row => row.Number).Distinct().Count());
        Assert.Equal(rows.OrderByDescending(row => row.StateSince).Select(row => row.StateSince), rows.Select(row => row.StateSince));
        Assert.Empty(await _shop.Inbox.OpenAsync());
    }

    [Theory]
    [InlineData(-1, 1)]
    [InlineData(0, 1)]
    [InlineData(5, 5)]
    [InlineData(int.MaxValue, 5)]
    public async Task Page_that_is_not_there_is_the_nearest_one(int asked, int shown)
    {
        var page = await _shop.Inbox.ClosedAsync(asked);

        Assert.Equal(shown, page.Page);
        Assert.NotEmpty(page.Rows);
    }
}
