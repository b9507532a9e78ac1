using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

public sealed partial class Order
{
    /// <summary>Longest message of the desk to the customer.</summary>
    public const int LongestMessage = 1000;

    /// <summary>Name and addresses are put right, whatever the order's state; what is written from now on goes to the new address.</summary>
    /// <param name="customer">Who it is, now that the address is right.</param>
    /// <param name="trackingCode">From now on the order's page opens by this one alone; null leaves it as it is.</param>
    internal Outcome<Order> CorrectContact(Contact contact, Customer customer, string? trackingCode, string by, DateTimeOffset at)
    {
        var changes = ContactChanges(Contact, contact);
        if (changes.Count == 0 && trackingCode is null)
            return new Refusal("noChange", "Name and addresses stand there like this already.");
        (Contact, Customer, TrackingCode) = (contact, customer, trackingCode ?? TrackingCode);
        string[] said =
        [
            .. changes.Count == 0 ? [] : new[] { $"Contact corrected: {string.Join("; ", changes.Select(change => $"{change.Name} {change.Was ?? "none"} -> {change.Now ?? "none"}"))}." },
            .. trackingCode is null ? [] : new[] { "The customer's page has a new address; the old one opens nothing any more." },
        ];
        Note(OrderEventKind.ContactCorrected, by, at, string.Join(' ', said));
        return this;
    }

    /// <summary>What is otherwise in the newer contact.</summary>
    public static IReadOnlyList<SpecChange> ContactChanges(Contact older, Contact newer)
    {
        SpecChange[] fields = [new("name", Tidy(older.Name), Tidy(newer.Name)), new("e-mail", Tidy(older.Email), Tidy(newer.Email)), new("phone", Tidy(older.Phone), Tidy(newer.Phone))];
        return [.. fields.Where(field => field.Was != field.Now)];
    }

    /// <summary>The desk writes to the customer, in any state.</summary>
    public Outcome<Order> WriteTo(string message, string by, DateTimeOffset at)
    {
        if (string.IsNullOrWhiteSpace(message))
            return new Refusal("noWords", "Write something first.");
        if (!HasAddress)
            return new Refusal("noAddress", this.ByWord() ?? "There is no e-mail address.");
        if (SpecCheck.Text(message, LongestMessage, "message", "The message") is { } problem)
            return new Refusal("badText", problem.Message);
        Note(OrderEventKind.WroteTo, by, at, "Wrote to the customer.", message.Trim());
        return this;
    }
}
