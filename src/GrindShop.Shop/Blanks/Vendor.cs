using System.Text.Json.Serialization;
using GrindShop.Shop.Mail;

namespace GrindShop.Shop.Blanks;

public enum VendorKind
{
    BlankSupplier,
    HeatTreater,
}

/// <summary>A firm the shop buys blanks from or sends cams to.</summary>
public sealed class Vendor
{
    public const int LongestEmail = 200;

    public int Id { get; private set; }

    public required string Code { get; init; }

    public required string Name { get; init; }

    public required VendorKind Kind { get; init; }

    /// <summary>Usual days from order (or sending) to receipt.</summary>
    public required int LeadTimeDays { get; init; }

    /// <summary>What a heat-treater does, in words for the traveler.</summary>
    public string Process { get; init; } = "";

    /// <summary>Where purchase orders are mailed to; null: they are not.</summary>
    [JsonInclude]
    public string? Email { get; private set; }

    /// <param name="email">Blank: none.</param>
    public Outcome<Vendor> WriteTo(string? email)
    {
        var address = string.IsNullOrWhiteSpace(email) ? null : email.Trim();
        if (address is not null && (address.Length > LongestEmail || !OutgoingMail.IsAddress(address)))
            return new Refusal("badAddress", $"\"{address}\" is not an e-mail address; one looks like name@example.com.");
        Email = address;
        return this;
    }
}
