namespace GrindShop.Shop.Orders;

/// <summary>Who asked. Known by e-mail, or by phone where there is none; one with neither is known to the desk by name.</summary>
public sealed class Customer
{
    public int Id { get; private set; }

    public required string Name { get; set; }

    public string? Email { get; set; }

    public string? Phone { get; set; }

    public required DateTimeOffset Since { get; init; }
}
