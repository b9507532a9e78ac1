using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Specs.Entry;
using GrindShop.Shop.Tests.Demo;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Orders;

public sealed class CallTests : IAsyncLifetime
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
    public async Task Incomplete_cam_is_taken_in_with_every_word()
    {
        var taken = await _shop.Intake.TakeAsync(Call("230 @.050 solid, like bob's"), "Imka");

        var order = (await _shop.Desk.FindAsync(taken.Order!.Number))!;
        Assert.Null(order.First.Answer);
        Assert.Equal(230, order.First.Spec.Intake.DurationAt050CrankDeg);
        Assert.Equal("solid, like bob's", order.First.Spec.Notes);
        Assert.Contains("As said: 230 @.050 solid, like bob's", Assert.Single(order.History).What, StringComparison.Ordinal);
    }

    /// <summary>With an e-mail address the customer is written to; an incomplete cam has a letter too.</summary>
    [Theory]
    [InlineData("230 @.050 solid")]
    [InlineData("RV8-R 112 lsa 108 icl 2 advanced")]
    [InlineData("")]
    public async Task Incomplete_cam_of_somebody_with_an_address_is_taken_in(string line)
    {
        var call = Call(line);

        Assert.NotNull((await _shop.Intake.TakeAsync(call with { Contact = call.Contact with { Email = "una@example.com" } }, "Imka")).Order);
    }

    [Fact]
    public async Task Contradictory_cam_is_taken_in_too() =>
        Assert.NotNull((await _shop.Intake.TakeAsync(Call("RV8-R 112 lsa 108 icl 2 advanced"), "Imka")).Order);

    [Fact]
    public async Task Call_taken_in_twice_is_one_order()
    {
        var call = Call("230 @.050");
        var (first, second) = (await _shop.Intake.TakeAsync(call, "Imka"), await _shop.Intake.TakeAsync(call, "Imka"));

        Assert.Equal(first.Order!.Number, second.Order!.Number);
        Assert.Equal("keyReused", (await _shop.Intake.TakeAsync(call with { CustomerReference = "x" }, "Imka")).Refusal!.Code);
    }

    [Theory]
    [InlineData(OrderChannel.Phone, new[] { "contact.name" })]
    [InlineData(OrderChannel.WalkIn, new[] { "contact.name" })]
    [InlineData(OrderChannel.Email, new[] { "contact.name", "contact.email" })]
    [InlineData(OrderChannel.Web, new[] { "contact.name", "contact.email" })]
    public async Task Who_calls_or_stands_at_the_desk_needs_a_name_and_no_address(OrderChannel channel, string[] wrong) =>
        Assert.Equal(wrong, (await _shop.Intake.TakeAsync(Call("230 @.050") with { Channel = channel, Contact = new Contact() }, "Imka")).Problems.Select(problem => problem.Field));

    [Fact]
    public async Task The_database_too_asks_who_wrote_for_an_address()
    {
        var order = (await _shop.Intake.TakeAsync(Call("230 @.050") with { Contact = new Contact { Name = "Una Thornquist" } }, "Imka")).Order!;
        await using var db = _shop.Db();

        var error = await Assert.ThrowsAsync<Npgsql.PostgresException>(() => db.Database.ExecuteSqlAsync($"UPDATE orders SET channel = 'Web' WHERE number = {order.Number}"));

        Assert.Equal("ck_orders_reachable", error.ConstraintName);
    }

    [Fact]
    public async Task Two_without_an_address_are_two_unless_the_desk_knows_them()
    {
        var call = Call("230 @.050") with { Channel = OrderChannel.WalkIn, Contact = new Contact { Name = "Una Thornquist" } };
        var one = (await _shop.Intake.TakeAsync(call, "Imka")).Order!;
        var other = (await _shop.Intake.TakeAsync(call with { SubmitKey = "other" }, "Imka")).Order!;
        var again = (await _shop.Intake.TakeAsync(call with { SubmitKey = "again", KnownCustomer = one.CustomerId }, "Imka")).Order!;

        Assert.NotEqual(one.CustomerId, other.CustomerId);
        Assert.Equal(one.CustomerId, again.CustomerId);
    }

    [Theory]
    [InlineData(null, "555-0142-99")]
    [InlineData("una@example.com", null)]
    [InlineData("una@example.com", "555-0142-99")]
    public async Task Somebody_known_by_name_who_gives_an_address_now_stays_one_customer(string? email, string? phone)
    {
        var call = Call("230 @.050") with { Channel = OrderChannel.WalkIn, Contact = new Contact { Name = "Una Thornquist" } };
        var one = (await _shop.Intake.TakeAsync(call, "Imka")).Order!;
        var again = (await _shop.Intake.TakeAsync(call with { SubmitKey = "again", KnownCustomer = one.CustomerId, Contact = call.Contact with { Email = email, Phone = phone } }, "Imka")).Order!;
        var third = (await _shop.Intake.TakeAsync(call with { SubmitKey = "third", Contact = call.Contact with { Email = email, Phone = phone } }, "Imka")).Order!;

        Assert.Equal((one.CustomerId, one.CustomerId), (again.CustomerId, third.CustomerId));
    }

    [Fact]
    public async Task Phone_given_with_a_later_order_is_known_when_it_calls()
    {
        var first = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("first", "una@example.com", "555-0142-01"), "Una")).Order!;
        await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("second", "una@example.com", "(555) 0142.02"), "Una");

        var caller = Assert.Single(await _shop.Of<CallerBook>().FindAsync(new Contact { Phone = "555 0142 02" }));

        Assert.Equal((first.CustomerId, true, "555-0142-01"), (caller.Customer.Id, caller.Sure, caller.Customer.Phone));
    }

    [Fact]
    public async Task Customer_known_by_mail_gets_the_phone_of_a_later_order_and_keeps_it()
    {
        await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("first", "una@example.com"), "Una");
        await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("second", "una@example.com", "555-0142-02"), "Una");
        var third = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("third", "una@example.com", "555-0142-03"), "Una")).Order!;

        Assert.Equal("555-0142-02", (await _shop.Desk.FindAsync(third.Number))!.Customer.Phone);
    }

    [Fact]
    public async Task Calls_are_looked_up_by_an_index_over_the_digits()
    {
        await using var db = _shop.Db();
        await using var transaction = await db.Database.BeginTransactionAsync();
        await using var command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = """
            SET LOCAL enable_seqscan = off;
            EXPLAIN (FORMAT JSON) SELECT customer_id FROM orders WHERE reverse(regexp_replace(contact->>'phone', '[^0-9]', '', 'g')) LIKE '2024105%'
            """;
        var plan = $"{await command.ExecuteScalarAsync()}";

        Assert.Contains("ix_orders_phone_digits", plan, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_order_without_an_address_goes_its_whole_way_and_says_what_is_to_be_told()
    {
        var mail = _shop.Of<CustomerMail>();
        var order = (await _shop.Intake.TakeAsync(Call("RV8-R hyd roller 222 @.050 .335 lobe 110+4") with { Channel = OrderChannel.WalkIn, Contact = new Contact { Name = "Una Thornquist" } }, "Imka")).Order!;
        Assert.Equal("No address: tell them by word when they come or call.", order.ByWord());

        order = (await _shop.Desk.QuoteAsync(order.Number, order.Version, order.First.Answer!.Best!.PartNumber, SomeOrders.Lines, "Imka")).Value!;
        Assert.Contains("$300.00", (await mail.ToTellAsync((await _shop.Desk.FindAsync(order.Number))!))!.Text, StringComparison.Ordinal);
        order = (await _shop.Desk.AcceptAsync(order.Number, order.Version, SomeOrders.Today.AddDays(14), "Imka")).Value!;
        Assert.Contains("promised for", (await mail.ToTellAsync((await _shop.Desk.FindAsync(order.Number))!))!.Subject, StringComparison.Ordinal);
        Assert.True((await _shop.Changing.CancelAsync(order.Number, order.Version, "Sold the car.", "Imka")).Succeeded);
        Assert.Empty(await _shop.Outbox.OfOrderAsync(order.Number));
    }

    [Fact]
    public async Task Complete_cam_is_answered()
    {
        var taken = await _shop.Intake.TakeAsync(Call("RV8-R hyd roller 222 @.050 .335 lobe 110+4"), "Imka");

        Assert.NotNull(taken.Order!.First.Answer);
    }

    [Theory]
    [InlineData("5555557342")]
    [InlineData("(555) 555 7342")]
    [InlineData("+1 555.555.7342")]
    public async Task Caller_is_known_by_the_number_in_any_spelling(string phone)
    {
        await _shop.Intake.TakeAsync(Call("RV8-R hyd roller 222/228 @.050 .335 lobe"), "Imka");

        var caller = Assert.Single(await _shop.Callers.FindAsync(new Contact { Phone = phone }));
        Assert.True(caller.Sure);
        Assert.Equal("Una Thornquist", caller.Customer.Name);
        Assert.Single(caller.Like(SpecEntry.Read("222 @.050 335 lobe", SeedFiles.Scenario.Families).Spec));
        Assert.Empty(caller.Like(SpecEntry.Read("232 @.050 335 lobe", SeedFiles.Scenario.Families).Spec));
    }

    [Theory]
    [InlineData("%%%")]
    [InlineData("___")]
    [InlineData("'; DROP TABLE customers; --")]
    public async Task Signs_of_a_search_pattern_are_letters_of_a_name(string name) => Assert.Empty(await _shop.Callers.FindAsync(new Contact { Name = name }));

    [Fact]
    public void Cams_that_share_too_little_are_not_the_same() =>
        Assert.False(NearlySame.Is(new CamSpec { LobeSeparationCamDeg = 112 }, Wishes.Street with { LobeSeparationCamDeg = 112 }));

    private static Enquiry Call(string line) => new()
    {
        SubmitKey = "call",
        Channel = OrderChannel.Phone,
        Spec = SpecEntry.Read(line, SeedFiles.Scenario.Families).Spec,
        Contact = new Contact { Name = "Una Thornquist", Phone = "555-555-7342" },
        AsSaid = line,
    };
}
