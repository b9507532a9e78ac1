using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Tests.Demo;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Orders.Quotes;

/// <summary>Every quote of the demo, added up again from the raw price and blank files by a computation of its own.</summary>
public class QuoteSumTests
{
    private static readonly JsonNode Prices = Json("prices.json"), Limits = Json("limits.json");

    private static readonly Dictionary<string, Dictionary<string, string>> Blanks = Csv("blanks.csv", "partNumber");

    private static readonly Dictionary<string, string> FiringOrders =
        Json("engines.json").AsArray().ToDictionary(engine => engine!["code"]!.GetValue<string>(), engine => engine!["firingOrder"]!.GetValue<string>());

    [Fact]
    public async Task Every_quote_of_the_demo_adds_up_from_the_files()
    {
        await using var database = await ShopTemplates.Scenario.CopyAsync();
        await using var shop = new TestShop(database);
        await using var db = shop.Db();
        var quotes = await db.Quotes.AsNoTracking().ToListAsync();

        Assert.True(quotes.Count >= 30);
        Assert.All(quotes, quote =>
        {
            Assert.Equal(quote.Cams.Sum(Expected), quote.Total);
            Assert.Equal(quote.Total, quote.Charged.Sum(line => line.Amount));
            Assert.All(quote.Lines, line => Assert.NotEmpty(line.Why));
        });
    }

    [Theory]
    [InlineData(WorkKind.GearReplacement, 1, new string[0])]
    [InlineData(WorkKind.GearReplacement, 1, new[] { "RUSH" })]
    [InlineData(WorkKind.Regrind, 1, new[] { "RUSH", "POLISH" })]
    [InlineData(WorkKind.Regrind, 4, new[] { "NITRIDE" })]
    [InlineData(WorkKind.GearReplacement, 8, new[] { "RUSH" })]
    public async Task Quote_of_a_repair_adds_up_from_the_files_and_explains_every_line(WorkKind kind, int pieces, string[] chosen)
    {
        await using var database = await ShopTemplates.Scenario.CopyAsync();
        await using var shop = new TestShop(database);
        var enquiry = SomeOrders.Enquiry("repair") with
        {
            Kind = kind,
            Quantity = pieces,
            ReceivedCondition = "Worn.",
            Gear = new GearSwap { Marks = "M-14", Old = CamGear.PressedIron, New = CamGear.PressedIron },
        };
        var order = (await shop.Intake.SubmitAsync(enquiry, "Desk")).Order!;

        var lines = (await shop.Desk.DraftAsync(order, new Dictionary<int, CamChoice> { [1] = new(null, chosen) })).Value!.Lines;

        var one = Amount("repairs", price => Is(price, "engineFamily", "RV8-R") && Is(price, "kind", JsonNamingPolicy.CamelCase.ConvertName(kind.ToString())))
            + chosen.Sum(code => Amount("adders", adder => Is(adder, "code", code)));
        var percent = Prices["quantityBreaks"]!.AsArray().Where(step => step!["from"]!.GetValue<int>() <= pieces).Select(step => step!["amount"]!.GetValue<decimal>()).DefaultIfEmpty(0).Max();
        Assert.Equal(pieces * (one - Math.Round(one * percent / 100, 2, MidpointRounding.AwayFromZero)), lines.Sum(line => line.Amount));
        Assert.All(lines, line => Assert.True(line.Why.Length > 0 && line.Figures.Length > 0));
        var offer = new QuoteOffer { Parts = new Dictionary<int, string>(), Lines = lines, ValidUntil = SomeOrders.Today.AddDays(10) };
        Assert.Equal(lines.Sum(line => line.Amount), (await shop.Desk.QuoteAsync(order.Number, order.Version, offer, "Desk")).Value!.Price);
    }

    private static decimal Amount(string list, Func<JsonNode?, bool> which) => Prices[list]!.AsArray().Single(which)!["amount"]!.GetValue<decimal>();

    private static decimal Expected(QuotedCam cam)
    {
        if (cam.Kind != WorkKind.NewGrind)
            return cam.Quantity * Amount("repairs", price => Is(price, "engineFamily", cam.Spec.EngineFamily!) && Is(price, "kind", JsonNamingPolicy.CamelCase.ConvertName(cam.Kind.ToString())));
        var (blank, grind, fit) = (Blanks[cam.PartNumber!], cam.Grind!, cam.Fit!);
        var lifter = JsonNamingPolicy.CamelCase.ConvertName(grind.Lifter.ToString());
        var sum = Prices["basePrices"]!.AsArray().Single(price => Is(price, "engineFamily", grind.EngineFamily) && Is(price, "lifter", lifter))!["amount"]!.GetValue<decimal>();
        sum += Math.Round(decimal.Parse(blank["costUsd"], CultureInfo.InvariantCulture) * Limits["blankMarkup"]!.GetValue<decimal>(), 2, MidpointRounding.AwayFromZero);
        var own = grind.FiringOrder.Split('-');
        var usual = FiringOrders[grind.EngineFamily].Split('-');
        var turned = Enumerable.Range(0, usual.Length).Any(by => usual.Select((_, i) => usual[(i + by) % usual.Length]).SequenceEqual(own));
        sum += blank["hardening"] == "soft" ? Adders("heatTreat") : 0;
        sum += fit.InStock ? 0 : Adders("specialOrder");
        sum += lifter.StartsWith("solid", StringComparison.Ordinal) ? Adders("solidLifter") : 0;
        sum += Math.Abs(fit.IntakeBaseCircleDiameterIn!.Value - fit.ExhaustBaseCircleDiameterIn!.Value) > .020 ? Adders("splitBaseCircles") : 0;
        sum += turned ? 0 : Adders("otherFiringOrder");
        return cam.Quantity * sum;
    }

    private static decimal Adders(string when) => Prices["adders"]!.AsArray().Where(adder => Is(adder, "when", when)).Sum(adder => adder!["amount"]!.GetValue<decimal>());

    private static bool Is(JsonNode? node, string field, string value) => node![field]!.GetValue<string>() == value;

    private static JsonNode Json(string file) => JsonNode.Parse(File.ReadAllText(Path.Combine(SeedFiles.Folder, file)))!;

    /// <summary>The columns asked for hold no quoted commas.</summary>
    private static Dictionary<string, Dictionary<string, string>> Csv(string file, string key)
    {
        var lines = File.ReadAllLines(Path.Combine(SeedFiles.Folder, file));
        var head = lines[0].Split(',');
        return lines.Skip(1).Where(line => line.Length > 0).Select(line => head.Zip(line.Split(',')).ToDictionary(cell => cell.First, cell => cell.Second)).ToDictionary(row => row[key]);
    }
}
