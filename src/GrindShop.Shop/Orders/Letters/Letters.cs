using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Mail;

namespace GrindShop.Shop.Orders;

/// <summary>What the shop writes to its customers, all of it in one place: plain text with the figures that were computed.</summary>
/// <param name="prices">The price list, for what a cam is likely to cost before anybody has priced it; null: nothing is said of it.</param>
/// <param name="today">The day it is written, in the shop's zone.</param>
public sealed class Letters(CatalogContent content, string publicAddress, PriceRules? prices = null, DateOnly today = default)
{
    /// <summary>The spec card, printed when the mail goes out; a quote goes by its number.</summary>
    public const string SpecCard = "spec-card";

    private readonly LetterParts _parts = new(content, publicAddress);

    public string ShopEmail => content.Rules.Settings.Email;

    /// <summary>The letter of a line of history, or null where the customer is not written to.</summary>
    public Letter? Of(Order order, OrderEvent line) => line.Kind switch
    {
        OrderEventKind.Received => Received(order),
        OrderEventKind.Asked => Questions(order, [.. order.Questions.Where(question => question.At == line.At).Select(question => new QuestionEntry(question.Cam, question.Field, question.Text))]),
        OrderEventKind.Quoted => Quoted(order),
        OrderEventKind.Accepted => Accepted(order),
        OrderEventKind.Shipped => Shipped(order),
        OrderEventKind.Declined => Declined(order, line.What),
        OrderEventKind.Expired => Expired(order),
        OrderEventKind.Revised => Revised(order),
        OrderEventKind.Cancelled => Cancelled(order, line.Told),
        OrderEventKind.WroteTo => Letter(order, "a message", $"{line.Told}\n\n{_parts.Follow(order)}"),
        _ => null,
    };

    private Letter Received(Order order) => Letter(order, IsRepair(order) ? "we have your request" : "we have your specification", $"""
        we have {(IsRepair(order) ? "written down what your camshaft needs" : "your camshaft specification")}. It is order {order.Number}; please give this number when you call or write.

        {_parts.Asked(order)}

        {(IsIncomplete(order) ? "Some things are still missing before we can say how it can be made. We will ask you." : _parts.Computed(order))}
        {(prices is null ? "" : _parts.Likely(order, prices, today))}
        Somebody at the shop looks at it next{(IsIncomplete(order) ? "." : " and names a price.")}

        {_parts.Follow(order)}
        """);

    /// <summary>The letter that goes out with these questions; also what the desk looks at before it sends them.</summary>
    public Letter Questions(Order order, IReadOnlyList<QuestionEntry> questions) => Letter(order, questions.Count == 1 ? "a question" : $"{questions.Count} questions", $"""
        before we can go on with your camshaft we need to know:

        {string.Join("\n\n", questions.Select((question, index) => $"{index + 1}. {_parts.Question(order, question)}"))}

        Answer them on your page, in the boxes below each question, or answer this mail:
        {_parts.Page(order)}

        {_parts.Asked(order)}
        """);

    private Letter Quoted(Order order) => Letter(order, "our price", $"""
        this is our price for your camshaft.

        {LetterParts.Price(order)}

        {_parts.Asked(order)}

        {_parts.Computed(order)}

        Nothing is ordered yet: it waits for your word. Accept it on the page named below, answer this mail or call us.
        {(order.CurrentQuote is { } quote ? $"The price is valid until {LetterParts.Day(quote.ValidUntil)}; the quote is attached.{LetterParts.Ships(quote)}" : "")}

        {_parts.Follow(order)}

        {LetterParts.Cautions}
        """) with { Papers = order.CurrentQuoteNumber is { } number ? [number] : [] };

    private Letter Accepted(Order order) => Letter(order, $"promised for {LetterParts.Day(order.PromisedOn!.Value)}", $"""
        thank you for the order. Your camshaft is promised for {LetterParts.Day(order.PromisedOn!.Value)}.

        {LetterParts.Price(order)}

        {(IsRepair(order) ? "Next your cam is looked over and put to work; bring or send it if it is not here yet." : "Next a blank is set aside for it, then it goes to the grinder.")}

        {_parts.Follow(order)}
        """);

    private Letter Shipped(Order order)
    {
        var (left, card) = order.Pieces > 1 ? ("your camshafts have left the shop", "Their spec cards are") : ("your camshaft has left the shop", "Its spec card is");
        return Letter(order, left, $"""
            {left}.{(HasSpecCard(order) ? $" {card} attached{(IsRepair(order) ? ": what was done, and what to mind before the engine runs" : ": lifts, durations, valve events and the distributor gear to run")}." : "")}

            {LetterParts.Cautions}

            {_parts.Follow(order)}
            """) with { Papers = HasSpecCard(order) ? [SpecCard] : [] };
    }

    private Letter Declined(Order order, string why) => Letter(order, "we cannot make it as described", $"""
        we cannot make this camshaft as it was described.

        Why: {why}

        {_parts.Asked(order)}

        If something may change, answer this mail or call us and we look at it again.

        {_parts.Follow(order)}
        """);

    private Letter Expired(Order order) => Letter(order, "our price has run out", $"""
        our price for your camshaft has run out. Nothing is lost: tell us, and we look at it again and renew it.

        {_parts.Asked(order)}

        {_parts.Follow(order)}
        """);

    private Letter Revised(Order order) => Letter(order, "changed as agreed", $"""
        your order was changed as agreed with {order.Revisions[^1].AgreedBy}.

        {LetterParts.Changes(order.Revisions[^1])}

        {_parts.Asked(order)}

        It is promised for {LetterParts.Day(order.PromisedOn!.Value)}. If this is not what you agreed to, call us at once.

        {_parts.Follow(order)}
        """);

    private Letter Cancelled(Order order, string? told) => Letter(order, "cancelled", $"""
        your order is cancelled.{(told is null ? "" : $"\n\n{told}")}
        {(order.Received > 0 ? $"\nA deposit of {PriceRules.Dollars(order.Received)} was received; we settle it with you.\n" : "")}
        If this is a mistake, answer this mail or call us at once.

        {_parts.Follow(order)}
        """);

    /// <summary>Where a grind was computed, or the customer's own cam was worked on.</summary>
    private static bool HasSpecCard(Order order) => order.ToldCams.Any(cam => !cam.NeedsBlank || cam.Answer is not null);

    private static bool IsIncomplete(Order order) => order.ToldCams.Any(cam => cam.NeedsBlank && cam.Answer is null);

    /// <summary>Only cams of the customer's own are worked on.</summary>
    private static bool IsRepair(Order order) => order.ToldCams.All(cam => !cam.NeedsBlank);

    /// <summary>Greeting, text and the shop's name below it.</summary>
    private Letter Letter(Order order, string about, string text) => new($"Order {order.Number}: {about}", $"""
        Hello {order.Contact.Name?.Trim() ?? ""},

        {text}

        {_parts.Signature}

        """);
}
