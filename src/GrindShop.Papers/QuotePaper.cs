using System.Globalization;
using GrindShop.Shop.Orders;

namespace GrindShop.Papers;

/// <summary>The quote as it goes to the customer; printed anew it says the same.</summary>
public static class QuotePaper
{
    private const double QrSide = 74;

    /// <summary>A PDF of as many Letter-size pages as cams and lines need.</summary>
    public static byte[] Print(QuoteFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var sheet = new Sheet($"Quote {facts.Quote.Number}", facts.Shop, facts.PrintedAt);
        var y = Band(sheet, facts, ShopHead.Draw(sheet, facts.Shop, "Quote", facts.Quote.Number));
        foreach (var cam in facts.Quote.Cams)
            y = QuoteCam.Draw(sheet, cam, facts.Quote.Cams.Count == 1, y + 8);
        y = Lines(sheet, facts.Quote, y + 12);
        y = HowToAccept(sheet, facts, y + 12);
        y = sheet.Room(y + 10, 60);
        Cautions.Draw(sheet, sheet.Title(Sheet.Left, y, Sheet.Width, "Please note"), 8, Notes);
        return sheet.Finish($"{facts.Quote.Number}, order {facts.Order.Number}, {facts.Shop.ShopName}");
    }

    private static readonly string[] Notes =
    [
        "The figures are a planning aid: the engine builder verifies clearances, spring loads and valve-train geometry on the engine.",
        "Base circle, metal that comes off and case are computed for the blank named here. The blank is set aside when the quote is accepted; until then it may be sold to somebody else.",
        "The shipping day is an estimate for acceptance on the day of the quote.",
    ];

    private static double Band(Sheet sheet, QuoteFacts facts, double y)
    {
        var (order, quote) = (facts.Order, facts.Quote);
        y = Field.Band(sheet, y, new("For", order.Contact.Name ?? order.Customer.Name, 222), new("Your reference", order.CustomerReference, 200), new("Order", order.Number, 118));
        return Field.Band(sheet, y,
            new("Date", Figures.Day(facts.Shop.Today(quote.At)), 222), new("Valid until", Figures.Day(quote.ValidUntil), 200),
            new("Estimated to ship", quote.ShipOn is { } ship ? Figures.Day(ship) : null, 118));
    }

    private static double Lines(Sheet sheet, Quote quote, double y)
    {
        y = sheet.Title(Sheet.Left, sheet.Room(y, 60), Sheet.Width, "Price (US dollars)");
        foreach (var line in quote.Charged)
            y = Line(sheet, line, quote.Cams.Count > 1, sheet.Room(y, 26));
        y = sheet.Room(y, 24);
        sheet.Rule(Sheet.Right - 160, y, 160, 1);
        sheet.Text(Sheet.Right - 160, y + 14, "Sum", Weight.SemiBold, 11);
        sheet.Text(Sheet.Right, y + 14, Money(quote.Total), Weight.Bold, 12, Align.Right);
        return y + 20;
    }

    private static double Line(Sheet sheet, PriceLine line, bool manyCams, double y)
    {
        var text = manyCams && line.Cam is { } cam ? $"Cam {cam}: {line.Text}" : line.Text;
        sheet.Text(Sheet.Left, y + 11, text, Weight.SemiBold, 9.5, mostWidth: Sheet.Width - 90);
        sheet.Text(Sheet.Right, y + 11, Money(line.Amount), Weight.Regular, 9.5, Align.Right);
        var below = line.Why.Length == 0 ? y + 21 : sheet.Lines(Sheet.Left, y + 21, Sheet.Width - 90, line.Why, Weight.Regular, 8, mostLines: 2);
        sheet.Hairline(Sheet.Left, below - 5, Sheet.Width);
        return below - 4;
    }

    private static double HowToAccept(Sheet sheet, QuoteFacts facts, double y)
    {
        y = sheet.Title(Sheet.Left, sheet.Room(y, QrSide + 24), Sheet.Width, "How to accept");
        QrSquare.Draw(sheet, Sheet.Right - QrSide, y, QrSide, facts.TrackUrl);
        var width = Sheet.Width - QrSide - 16;
        var below = sheet.Lines(Sheet.Left, y + 10, width, $"Open {facts.TrackUrl} (or scan the square), type your name and accept; or tell the shop: {facts.Shop.Phone}, {facts.Shop.Email}.", Weight.Regular, 9);
        below = sheet.Lines(Sheet.Left, below + 2, width, "Whoever has this address can see the order and answer for it: keep it to yourself.", Weight.Regular, 9);
        return Math.Max(below, y + QrSide);
    }

    private static string Money(decimal amount) => amount.ToString("#,0.00", CultureInfo.InvariantCulture);
}
