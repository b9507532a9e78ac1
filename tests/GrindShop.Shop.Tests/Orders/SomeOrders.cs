using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;

namespace GrindShop.Shop.Tests.Orders;

/// <summary>Orders to start from.</summary>
internal static class SomeOrders
{
    public static readonly DateOnly Today = DateOnly.FromDateTime(TestShop.Now.UtcDateTime);

    public static readonly IReadOnlyList<PriceLine> Lines = [new PriceLine("base", "Grinding", 300m)];

    /// <summary>The answer to <see cref="Wishes.Street"/> with one of every blank in stock.</summary>
    public static readonly FeasibilityAnswer Answer = Shelf.Judge(Wishes.Grind(Wishes.Street));

    public static string Blank => Answer.Best!.PartNumber;

    public static Enquiry Enquiry(string key, string? email = "una@example.com", string? phone = null) => new()
    {
        SubmitKey = key,
        Channel = OrderChannel.Web,
        Spec = Wishes.Street,
        Contact = new Contact { Name = "Una Thornquist", Email = email, Phone = phone },
    };

    public static Order New() => New(new OrderNumbers("C1", "TRACK"), Answer, Someone());

    public static Order Accepted(int quantity = 1) => Accepted(new OrderNumbers("C1", "TRACK"), Answer, Blank, Someone(), quantity);

    public static Order Accepted(OrderNumbers numbers, FeasibilityAnswer answer, string partNumber, Customer customer, int quantity = 1)
    {
        var order = New(numbers, answer, customer, quantity);
        Assert.True(order.Quote(partNumber, Lines, "Desk", TestShop.Now).Succeeded);
        Assert.True(order.Accept(Today.AddDays(20), Today, "Desk", TestShop.Now).Succeeded);
        return order;
    }

    private static Order New(OrderNumbers numbers, FeasibilityAnswer answer, Customer customer, int quantity = 1) =>
        Order.Receive(numbers, Enquiry(numbers.Number + numbers.TrackingCode) with { Quantity = quantity }, customer, answer, "Una Thornquist", TestShop.Now);

    private static Customer Someone() => new() { Name = "Una Thornquist", Email = "una@example.com", Since = TestShop.Now };
}
