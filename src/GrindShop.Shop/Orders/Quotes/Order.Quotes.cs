using GrindShop.Shop.Feasibility;

namespace GrindShop.Shop.Orders;

public sealed partial class Order
{
    private const string NoReason = "No reason given.";

    private readonly List<Quote> _quotes = [];

    /// <summary>Every price that was ever offered, oldest first.</summary>
    public IReadOnlyList<Quote> Quotes => [.. _quotes.OrderBy(quote => quote.Id)];

    public int QuotesMade { get; private set; }

    /// <summary>The quote that <see cref="Price"/> stands on; null while there is none, or none any more.</summary>
    public string? CurrentQuoteNumber { get; private set; }

    public Quote? CurrentQuote => _quotes.Find(quote => quote.Number == CurrentQuoteNumber);

    public IReadOnlyList<PriceLine> PriceLines => CurrentQuote?.Lines ?? [];

    /// <summary>Who said yes, as the name was typed or told; null before.</summary>
    public string? AcceptedBy { get; private set; }

    /// <summary>Offers a price for an order of one cam; see <see cref="Quote(QuoteOffer, DateOnly, string, DateTimeOffset)"/>.</summary>
    public Outcome<Order> Quote(string partNumber, IReadOnlyList<PriceLine> lines, string by, DateTimeOffset at)
    {
        var today = DateOnly.FromDateTime(at.UtcDateTime);
        return Quote(QuoteOffer.Of(partNumber, lines, today), today, by, at);
    }

    /// <summary>Offers a price. It is kept as it was; an earlier one can no longer be accepted.</summary>
    public Outcome<Order> Quote(QuoteOffer offer, DateOnly today, string by, DateTimeOffset at)
    {
        if (!State.IsBeforeAcceptance())
            return NotNow("priced");
        if ((_cams.Select(cam => cam.RefuseBlank(offer.Parts.GetValueOrDefault(cam.Ordinal))).FirstOrDefault(no => no is not null) ?? offer.Refuse(today)) is { } refusal)
            return refusal;
        _cams.ForEach(cam => cam.QuotedPartNumber = offer.Parts.GetValueOrDefault(cam.Ordinal));
        CurrentQuoteNumber = $"Q{Number[1..]}-{++QuotesMade}";
        Price = offer.Total;
        _quotes.Add(new Quote(CurrentQuoteNumber, offer, [.. Cams.Select(QuotedCam.Of)], by, at));
        Enter(OrderState.Quoted, OrderEventKind.Quoted, by, at, FormattableString.Invariant($"Priced at ${Price:N2}{OnBlanks()} ({CurrentQuoteNumber}, valid until {offer.ValidUntil:yyyy-MM-dd})."));
        return this;
    }

    /// <summary>The customer says yes, to the desk or on the tracking page, and is promised a day.</summary>
    /// <param name="agreedBy">The customer's name as it was typed; null where the desk took the word.</param>
    public Outcome<Order> Accept(DateOnly promisedOn, DateOnly today, string by, DateTimeOffset at, string? agreedBy = null)
    {
        if (State != OrderState.Quoted)
            return NotNow("accepted");
        if (CurrentQuote is { } quote && quote.ValidUntil < today)
            return RanOut(quote);
        if (promisedOn < today || promisedOn > today.AddYears(2))
            return new Refusal("badPromise", $"The promised date must lie between today ({today:yyyy-MM-dd}) and two years from now.");
        (PromisedOn, AcceptedBy) = (promisedOn, agreedBy ?? Customer.Name);
        var how = agreedBy is null ? "Accepted" : $"{CurrentQuoteNumber} accepted by {agreedBy} on the tracking page";
        Enter(OrderState.Accepted, OrderEventKind.Accepted, by, at, $"{how}; promised for {promisedOn:yyyy-MM-dd}.");
        return this;
    }

    /// <summary>The customer says no to the price.</summary>
    public Outcome<Order> DeclineByCustomer(string name, string why, DateTimeOffset at)
    {
        if (State != OrderState.Quoted)
            return NotNow("declined");
        Enter(OrderState.Declined, OrderEventKind.DeclinedByCustomer, name, at, string.IsNullOrWhiteSpace(why) ? NoReason : why.Trim());
        return this;
    }

    /// <summary>The price has run out; it can be offered again.</summary>
    public Outcome<Order> Expire(DateOnly today, string by, DateTimeOffset at)
    {
        if (State != OrderState.Quoted || CurrentQuote is not { } quote || quote.ValidUntil >= today)
            return NotNow("expired");
        Enter(OrderState.Expired, OrderEventKind.Expired, by, at, $"{quote.Number} ran out on {quote.ValidUntil:yyyy-MM-dd}.");
        return this;
    }

    private static Refusal RanOut(Quote quote) =>
        new("expired", $"The price {quote.Number} was valid until {quote.ValidUntil:yyyy-MM-dd}. Ask the shop to renew it.");

    private string OnBlanks() => _cams.Select(cam => cam.QuotedPartNumber).OfType<string>().Distinct().ToList() switch
    {
        [] => "",
        [var one] => $" on blank {one}",
        var several => $" on blanks {string.Join(", ", several)}",
    };

    private void DropPrice()
    {
        _cams.ForEach(cam => cam.QuotedPartNumber = null);
        CurrentQuoteNumber = null;
        Price = 0;
    }
}
