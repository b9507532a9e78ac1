using GrindShop.Shop.Orders;
using GrindShop.Shop.Orders.Finding;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Orders.Finding;

public sealed class OrderSearchTests(SearchedShop shop) : IClassFixture<SearchedShop>
{
    [Theory]
    [InlineData("Lena Rushbourne", "Lena Rushbourne", "customer")]
    [InlineData("bourne", "Lena Rushbourne", "customer")]
    [InlineData("rushborne", "Lena Rushbourne", "customer")]
    [InlineData("lina rushborn", "Lena Rushbourne", "customer")]
    [InlineData("corin.orlowe@example.com", "Corin Orlowe", "e-mail")]
    [InlineData("5555550128", "Corin Orlowe", "phone")]
    [InlineData("+1 555 555 0128", "Corin Orlowe", "phone")]
    [InlineData("555-0128", "Corin Orlowe", "phone")]
    [InlineData("(555) 555 0128", "Corin Orlowe", "phone")]
    [InlineData("0128", "Corin Orlowe", "phone")]
    [InlineData("salt lick machine", "Saltlick Machine", "customer")]
    public async Task Customer_is_found_by_name_address_or_phone_in_any_spelling(string question, string customer, string place)
    {
        var found = (await shop.Search.FindAsync(question)).Orders[0];

        Assert.Equal((customer, place), (found.Customer, found.Why[0].Place));
        Assert.Contains(found.Why[0].Pieces, piece => piece.IsHit);
    }

    [Theory]
    [InlineData("C1015")]
    [InlineData("c1015")]
    public async Task Number_is_the_best_hit(string question)
    {
        var found = (await shop.Search.FindAsync(question)).Orders[0];

        Assert.Equal(("C1015", "order"), (found.Number, found.Why[0].Place));
    }

    [Fact]
    public async Task Quote_job_lot_and_blank_lead_to_the_order()
    {
        await using var db = shop.Shop.Db();
        var quote = await db.Orders.Where(order => order.Number == "C1190").SelectMany(order => order.Quotes).Select(one => one.Number).FirstAsync();
        var lot = await db.Jobs.Where(job => job.Code == "J1001").Select(job => job.BlankLot!.LotNumber).SingleAsync();

        Assert.Equal("C1190", (await shop.Search.FindAsync(quote)).Orders[0].Number);
        Assert.Equal("C1001", (await shop.Search.FindAsync("J1001")).Orders[0].Number);
        Assert.Contains("C1001", await NumbersAsync(lot));
        Assert.Contains("C1001", await NumbersAsync("RV8R-AD-05"));
        Assert.Contains("C1001", await NumbersAsync("rv8r-ad"));
    }

    [Fact]
    public async Task What_is_written_is_found_at_once_and_what_was_taken_back_no_more()
    {
        var taken = (await shop.Shop.Intake.TakeAsync(
            new Enquiry
            {
                SubmitKey = "search",
                Channel = OrderChannel.Phone,
                Spec = new CamSpec { Notes = "for the yellow swamp buggy", RockerRatio = 1.73 },
                Contact = new Contact { Name = "Wilma Quarrington", Phone = "555-555-9731" },
            },
            "Imka")).Order!;

        Assert.Equal(("notes", taken.Number), await OnlyAsync("swamp yellow"));
        Assert.Equal(("customer", taken.Number), await OnlyAsync("quarrington buggy"));
        Assert.Equal(("specification", taken.Number), await OnlyAsync("1.73"));
        Assert.Equal(taken.Number, (await shop.Search.FindAsync("quarington")).Orders[0].Number);
        await DoAsync(taken.Number, order => shop.Shop.Desk.CorrectAsync(taken.Number, order.Version, Wishes.Street with { Notes = "for the airboat" }, "", "Imka"));
        await DoAsync(taken.Number, order => shop.Shop.Desk.AskAsync(taken.Number, order.Version, [new QuestionEntry(1, null, "Which propeller turns on it?")], "key", "Imka"));
        Assert.Equal(("notes", taken.Number), await OnlyAsync("airboat"));
        Assert.Equal(("question", taken.Number), await OnlyAsync("propeller"));
        Assert.Equal(0, (await shop.Search.FindAsync("swamp")).Total);
        await DoAsync(taken.Number, order => shop.Shop.Desk.DeclineAsync(taken.Number, order.Version, "no pontoon allowed", "Imka"));
        Assert.Equal(("history", taken.Number), await OnlyAsync("pontoon"));
    }

    [Fact]
    public async Task Renamed_customer_is_found_under_the_new_name()
    {
        await using var db = shop.Shop.Db();
        await db.Database.ExecuteSqlRawAsync("UPDATE customers SET name = 'Bramblewick Hauling' WHERE name = 'Long Straight Racing'");

        var found = await shop.Search.FindAsync("bramblewick");

        Assert.NotEmpty(found.Orders);
        Assert.All(found.Orders, order => Assert.Equal("Bramblewick Hauling", order.Customer));
    }

    [Fact]
    public async Task Many_are_read_page_by_page_and_none_is_shown_twice()
    {
        var first = await shop.Search.FindAsync("hydraulic roller");
        var pages = new List<FoundPage>();
        for (var page = 1; page <= first.Pages; page++)
            pages.Add(await shop.Search.FindAsync("hydraulic roller", page));

        Assert.True(first.Pages > 2, $"{first.Total}");
        Assert.Equal(first.Total, pages.SelectMany(page => page.Orders).Select(order => order.Number).Distinct().Count());
        Assert.Equal(1, (await shop.Search.FindAsync("hydraulic roller", 1000)).Page);
    }

    [Theory]
    [InlineData("")]
    [InlineData("'")]
    [InlineData("'; DROP TABLE orders; --")]
    [InlineData("%%%%")]
    [InlineData("____")]
    [InlineData("zz%zz")]
    [InlineData("\\\\\\")]
    [InlineData("\"\"\"((( & | ! :* <->")]
    [InlineData("zzq:* | !zzq")]
    [InlineData("a\0b\ud800c")]
    [InlineData("\ue000\ue001")]
    public async Task Hostile_questions_find_nothing_and_break_nothing(string question) => Assert.Empty((await shop.Search.FindAsync(question)).Orders);

    [Theory]
    [InlineData("q")]
    [InlineData("zzq ")]
    [InlineData("'")]
    public async Task Endless_question_is_cut(string text) => Assert.Empty((await shop.Search.FindAsync(string.Concat(Enumerable.Repeat(text, 10_000)))).Orders);

    private async Task DoAsync(string number, Func<Order, Task<Outcome<Order>>> act) => Assert.Null((await act((await shop.Shop.Desk.FindAsync(number))!)).Refusal);

    private async Task<List<string>> NumbersAsync(string question) => [.. (await shop.Search.FindAsync(question)).Orders.Select(order => order.Number)];

    private async Task<(string Place, string Number)> OnlyAsync(string question)
    {
        var found = Assert.Single((await shop.Search.FindAsync(question)).Orders);
        return (found.Why[0].Place, found.Number);
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
