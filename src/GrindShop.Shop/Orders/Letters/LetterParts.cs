using System.Globalization;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>The paragraphs that letters share.</summary>
internal sealed class LetterParts(CatalogContent content, string publicAddress)
{
    // Common practice, no source.
    public const string Cautions = """
        Before you run it: check piston-to-valve clearance, coil bind, retainer-to-seal clearance and rocker and pushrod geometry,
        and look at the distributor gear's pattern early. The figures are a planning aid; the engine builder verifies them on the engine.
        """;

    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    public string Signature => string.Join('\n', new[] { content.Rules.Settings.ShopName, content.Rules.Settings.Address, content.Rules.Settings.Phone });

    /// <summary>The address of the customer's own page.</summary>
    public string Page(Order order) => $"{publicAddress}/track/{order.TrackingCode}";

    public string Follow(Order order) => $"""
        Follow the order here, without an account:
        {Page(order)}
        Whoever has this address can see the order: pass it on only to whom it concerns.
        """;

    /// <summary>A question with the cam it is about, where there are several.</summary>
    public string Question(Order order, QuestionEntry question) => order.OfCam(question.Cam, content.Families, question.Text.Trim());

    public string Asked(Order order) => List("What you asked for", [
        .. order.ToldCams.SelectMany(cam => OfCam(order, cam, Asked(cam))),
        order.CustomerReference is { } reference ? $"Your reference: {reference}" : "",
    ]);

    /// <summary>The shop's answer in words: verdict, blank, base circle, case, gear.</summary>
    public string Computed(Order order) => order.ToldCams.SelectMany(cam => OfCam(order, cam, Computed(cam).Distinct())).ToList() is { Count: > 0 } lines
        ? List("What the computation says", lines)
        : "Your cam is looked over and measured when it is here.";

    private static IEnumerable<string> OfCam(Order order, OrderCam cam, IEnumerable<string> lines) =>
        lines.Where(line => line.Length > 0).Select(line => order.ToldCams.Count > 1 ? $"Cam {cam.Ordinal}: {line}" : line);

    private IEnumerable<string> Asked(OrderCam cam)
    {
        var engine = content.Family(cam.Spec.EngineFamily)?.Name ?? cam.Spec.EngineFamily;
        var pieces = cam.Quantity switch { 0 => "taken out of the order", 1 => null, var many => $"{many} pieces" };
        var work = cam.Kind == WorkKind.NewGrind ? null : cam.Kind.Words();
        yield return string.Join(", ", new[] { work, engine, cam.Spec.Lifter?.Words(), pieces }.OfType<string>());
        yield return cam.Spec.ShortInWords();
        if (cam.Gear is { } gear)
            yield return $"{gear.Words}, on the cam marked {gear.Marks}";
        if (cam.ConditionWords is { } condition)
            yield return condition;
    }

    private IEnumerable<string> Computed(OrderCam cam)
    {
        if (cam.Answer is not { } answer)
            return [];
        var fit = answer.Blanks.FirstOrDefault(blank => blank.PartNumber == cam.QuotedPartNumber) ?? answer.Best;
        return [.. answer.Reasons, .. fit is null ? [] : Of(fit, content.Family(answer.Grind.EngineFamily))];
    }

    public static string Price(Order order) => List(
        $"Price of order {order.Number}", [.. Charged(order.CurrentQuote), $"Together: {PriceRules.Dollars(order.Price)}"]);

    /// <summary>Two cams alike have lines alike: each is told, with its cam, as the quote prints it.</summary>
    private static IEnumerable<string> Charged(Quote? quote) =>
        quote?.Charged.Select(line => $"{(quote.Cams.Count > 1 && line.Cam is { } cam ? $"Cam {cam}: " : "")}{line.Text}: {PriceRules.Dollars(line.Charge)}") ?? [];

    /// <summary>Price range and shipping day of a new grind before anybody has priced it, with empty lines around it; nothing where the list has no price.</summary>
    public string Likely(Order order, PriceRules prices, DateOnly today)
    {
        if (order.ToldCams is not [{ Kind: WorkKind.NewGrind, Answer: { } answer } cam] || Outlook.Of(answer, content, prices, today) is not { Least: { } least, Most: { } most, ShipsOn: { } day })
            return "";
        var price = least == most ? PriceRules.Dollars(least) : $"{PriceRules.Dollars(least)} to {PriceRules.Dollars(most)}, depending on the blank";
        return $"\n{List("What to expect", [$"Likely price{(cam.Quantity > 1 ? " of each" : "")}: {price}.", $"Ordered today, it could leave the shop by {Day(day)}.", "The price we name and the day we promise decide; these follow from our price list and our usual days."])}\n";
    }

    /// <summary>When the cams of a quote would ship, as a sentence behind another.</summary>
    public static string Ships(Quote quote) => quote.ShipOn is { } day ? $" Accepted on the day of the quote, it would leave the shop by {Day(day)}." : "";

    public static string Changes(OrderRevision revision) => List($"Change {revision.Number}", revision.Changes.Select(change => $"{change.Name}: {change.Was ?? "nothing"} -> {change.Now ?? "nothing"}"));

    public static string Day(DateOnly day) => day.ToString("dddd, MMMM d, yyyy", Plain);

    private static IEnumerable<string> Of(BlankFit fit, EngineFamily? family)
    {
        if (fit is { IntakeBaseCircleDiameterIn: { } intake, ExhaustBaseCircleDiameterIn: { } exhaust })
            yield return Math.Abs(intake - exhaust) < .0005
                ? $"Base circle from blank {fit.PartNumber}: {In(intake)} (diameter)."
                : $"Base circles from blank {fit.PartNumber}: intake {In(intake)}, exhaust {In(exhaust)} (diameters).";
        if (fit.LeastCaseLeftIn is { } left)
            yield return $"At least {In(left)} of the hardened case is left under the lobes.";
        if (fit.NeedsHeatTreat)
            yield return "The blank is soft: it is rough ground, hardened at the heat-treater's, and then finish ground.";
        if (family is { Gear: not GearPosition.None })
            yield return $"Distributor gear: {fit.Gear.Reason}";
    }

    private static string In(double value) => value.ToString("0.000", Plain) + " in";

    private static string List(string title, IEnumerable<string> lines) => $"{title}\n{string.Join('\n', lines.Where(line => line.Length > 0).Select(line => $"- {line}"))}";
}
