using System.Globalization;
using GrindShop.Shop.Orders;

namespace GrindShop.Papers.Tests;

public class QuotePaperTests
{
    private const string Url = "http://shop.example:8080/track/SECRETTRACKING";

    [Fact]
    public void Every_charged_line_its_reason_and_the_sum_can_be_read_back()
    {
        var order = Order();
        var text = Text(order);

        foreach (var line in order.CurrentQuote!.Charged)
        {
            Assert.Contains(Packed(line.Text), text, StringComparison.Ordinal);
            Assert.Contains(Packed(line.Why), text, StringComparison.Ordinal);
            Assert.Contains(line.Amount.ToString("#,0.00", CultureInfo.InvariantCulture), text, StringComparison.Ordinal);
        }
        Assert.Contains("1,037.13", text, StringComparison.Ordinal);
        Assert.Contains("Q1042-2", text, StringComparison.Ordinal);
        Assert.Contains(Url, text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_desk_struck_and_why_it_changed_a_line_stay_in_the_shop()
    {
        var text = Text(Order());

        Assert.DoesNotContain("Rush", text, StringComparison.Ordinal);
        Assert.DoesNotContain(Packed("tenth cam this year"), text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_earlier_quote_prints_as_it_was()
    {
        var order = Order();
        var first = order.Quotes[0];

        Assert.Contains("417.13", Text(order, first), StringComparison.Ordinal);
        Assert.DoesNotContain("1,037.13", Text(order, first), StringComparison.Ordinal);
    }

    [Fact]
    public void Grind_and_blank_stand_there_with_their_figures()
    {
        var order = Order();
        var (cam, text) = (order.CurrentQuote!.Cams[0], Text(order));

        Assert.Contains(cam.PartNumber!, text, StringComparison.Ordinal);
        Assert.Contains(Figures.Lift(cam.Grind!.Intake.LobeLiftIn), text, StringComparison.Ordinal);
        Assert.Contains(Figures.In(cam.Fit!.IntakeBaseCircleDiameterIn), text, StringComparison.Ordinal);
        Assert.Contains(Figures.In(cam.Fit.MaxRemovalIn), text, StringComparison.Ordinal);
    }

    [Fact]
    public void Many_lines_go_on_a_further_page()
    {
        var lines = Enumerable.Range(1, 40).Select(i => new PriceLine($"own-{i}", $"Extra {i}", i) { Why = "Asked for.", Reason = "asked" }).ToList();
        var order = Order(lines);

        var paper = new PaperText(Print(order, order.CurrentQuote!));

        Assert.True(paper.Pages.Count > 1);
        Assert.All(lines, line => Assert.Contains($"{line.Text} {line.Amount:0.00}", paper.Lines));
        Assert.Empty(paper.Overlaps());
    }

    private static Order Order(IReadOnlyList<PriceLine>? lines = null)
    {
        var order = new Scene().Job().Order;
        var fresh = GrindShop.Shop.Orders.Order.Receive(new OrderNumbers("C1042", "SECRETTRACKING"), new Enquiry { SubmitKey = "key", Channel = OrderChannel.Phone, Spec = order.First.Spec, Contact = order.Contact }, order.Customer, order.First.Answer, "Petra Vane", Scene.Now);
        var part = order.First.QuotedPartNumber!;
        fresh.Quote(part, [new PriceLine("base", "Grinding", 417.13m) { Why = "The shop's price." }], "Petra Vane", Scene.Now);
        var today = new DateOnly(2026, 11, 25);
        fresh.Quote(QuoteOffer.Of(part, [], today) with { Lines = lines ?? Lines, ShipOn = today.AddDays(20) }, today, "Petra Vane", Scene.Now);
        return fresh;
    }

    private static readonly IReadOnlyList<PriceLine> Lines =
    [
        new("base", "Grinding, Ridgetop V8", 1017.13m) { RuleAmount = 1017.13m, Why = "The shop's price for this engine family." },
        new("RUSH", "Rush: ahead of the queue", 120) { RuleAmount = 120, IsStruck = true, Reason = "our delay", Why = "Chosen." },
        new("own-1", "Degree wheel card", 20) { Why = "Agreed for this order.", Reason = "tenth cam this year" },
    ];

    private static string Text(Order order, Quote? quote = null) => Packed(new PaperText(Print(order, quote ?? order.CurrentQuote!)).All);

    private static byte[] Print(Order order, Quote quote) => QuotePaper.Print(new QuoteFacts(order, quote, Scene.Shop, Url, Scene.Now));

    private static string Packed(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));
}
