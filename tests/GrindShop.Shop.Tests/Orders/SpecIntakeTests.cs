using GrindShop.Shop.Orders;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Orders;

public sealed class SpecIntakeTests : IAsyncLifetime
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

    [Fact]
    public async Task Same_key_twenty_times_at_once_is_one_order()
    {
        var results = await SubmitAsync(20, _ => SomeOrders.Enquiry("same"));

        Assert.Single(results.Select(result => result.Order!.Number).Distinct());
        await using var db = _one.Db();
        Assert.Equal(1, await db.Orders.CountAsync(order => order.SubmitKey == "same"));
        Assert.Equal(1, await db.Set<OrderEvent>().CountAsync(line => line.OrderId == results[0].Order!.Id));
    }

    [Theory]
    [InlineData("una@example.com", null)]
    [InlineData(null, "555-555-0142")]
    public async Task First_enquiries_of_one_new_customer_at_once_make_one_customer(string? email, string? phone)
    {
        var results = await SubmitAsync(12, i => SomeOrders.Enquiry($"key-{i / 2}", email, phone));

        Assert.All(results, result => Assert.NotNull(result.Order));
        Assert.Equal(6, results.Select(result => result.Order!.Number).Distinct().Count());
        await using var db = _one.Db();
        Assert.Equal(1, await db.Customers.CountAsync(customer => customer.Name == "Una Thornquist"));
    }

    [Fact]
    public async Task Key_used_for_another_enquiry_is_refused()
    {
        await _one.Intake.SubmitAsync(SomeOrders.Enquiry("key"), "Una");

        var other = await _one.Intake.SubmitAsync(SomeOrders.Enquiry("key") with { CustomerReference = "another" }, "Una");

        Assert.Equal("keyReused", other.Refusal!.Code);
    }

    [Fact]
    public async Task Enquiry_with_something_wrong_leaves_nothing_behind()
    {
        var result = await _one.Intake.SubmitAsync(SomeOrders.Enquiry("key", "no address"), "Una");

        Assert.Equal("contact.email", Assert.Single(result.Problems).Field);
        await using var db = _one.Db();
        Assert.False(await db.Customers.AnyAsync(customer => customer.Name == "Una Thornquist"));
    }

    private Task<SubmitResult[]> SubmitAsync(int count, Func<int, Enquiry> enquiry) =>
        Task.WhenAll(Enumerable.Range(0, count).Select(i => Task.Run(() => (i % 2 == 0 ? _one : _two).Intake.SubmitAsync(enquiry(i), "Una"))));
}
