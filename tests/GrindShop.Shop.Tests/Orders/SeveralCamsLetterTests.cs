using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Demo;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;

namespace GrindShop.Shop.Tests.Orders;

/// <summary>Letters about orders of several cams: nothing of a cam is left out because another one is like it.</summary>
public sealed partial class SeveralCamsLetterTests
{
    private static readonly Letters Letters = new(new CatalogContent(SeedFiles.Scenario.Families, Shelf.Blanks, Shelf.Rules), "https://shop.example");

    private static readonly Gen<PriceLine> Line = Gen.Select(Gen.Int[1, 4], Gen.OneOf("Grinding", "Blank", "Rush"), Gen.Int[1, 60_000], Gen.Bool, (cam, text, cents, struck) =>
        new PriceLine(text, text, cents / 100m) { Cam = cam == 4 ? null : cam, RuleAmount = cents / 100m, IsStruck = struck, Reason = "agreed" });

    [Fact]
    public void Lines_of_the_letter_make_its_sum_for_any_order() => Gen.Select(Gen.Int[1, 3], Line.List[1, 12], Gen.Bool).Where(given => given.Item2.Exists(line => !line.IsStruck)).Sample(
        (cams, lines, doubled) =>
        {
            var mine = lines.ConvertAll(line => line with { Cam = line.Cam > cams ? cams : line.Cam });
            var order = Quoted(cams, doubled ? [.. mine, .. mine] : mine);
            foreach (var text in new[] { Text(order, OrderEventKind.Quoted), Text(Accept(order), OrderEventKind.Accepted) })
            {
                var money = Money().Matches(text).Select(match => decimal.Parse(match.Groups[1].Value, NumberStyles.Number, CultureInfo.InvariantCulture)).ToList();
                Assert.Equal(order.Price, money[^1]);
                Assert.Equal(money[^1], money.SkipLast(1).Sum());
            }
        },
        iter: 300);

    [Fact]
    public void Each_of_two_like_cams_is_told_with_its_price_its_specification_and_its_answer()
    {
        var order = Quoted(2, [new PriceLine("base", "Grinding", 300) { Cam = 1, RuleAmount = 300 }, new PriceLine("base", "Grinding", 300) { Cam = 2, RuleAmount = 300 }]);

        var text = Text(order, OrderEventKind.Quoted);

        foreach (var cam in new[] { "Cam 1", "Cam 2" })
        {
            Assert.Contains($"- {cam}: Grinding: $300.00", text, StringComparison.Ordinal);
            Assert.Contains($"- {cam}: {Wishes.Street.ShortInWords()}", text, StringComparison.Ordinal);
            Assert.Contains($"- {cam}: {order.First.Answer!.Reasons[0]}", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Question_says_which_cam_and_engine_it_is_about()
    {
        var order = Of(2);
        Assert.True(order.Ask([new QuestionEntry(2, null, "Which gear?")], "Desk", TestShop.Now, "key").Succeeded);

        Assert.Contains($"1. Cam 2 ({Shelf.Family(order.First.Answer!.Grind).Name}): Which gear?", Text(order, OrderEventKind.Asked), StringComparison.Ordinal);
        Assert.Equal("Cam 2: Which gear?", order.History[^1].What);
    }

    [Fact]
    public void Only_cam_is_not_named()
    {
        var order = Of(1);
        Assert.True(order.Ask([new QuestionEntry(1, null, "Which gear?")], "Desk", TestShop.Now, "key").Succeeded);

        Assert.DoesNotContain("Cam 1", Text(order, OrderEventKind.Asked), StringComparison.Ordinal);
    }

    private static Order Of(int cams)
    {
        var order = SomeOrders.New();
        for (var cam = 2; cam <= cams; cam++)
            Assert.True(order.AddCam(new CamEntry { Spec = Wishes.Street }, SomeOrders.Answer, "Desk", TestShop.Now).Succeeded);
        return order;
    }

    private static Order Quoted(int cams, IReadOnlyList<PriceLine> lines)
    {
        var order = Of(cams);
        var offer = new QuoteOffer { Parts = order.Cams.ToDictionary(cam => cam.Ordinal, _ => SomeOrders.Blank), Lines = lines, ValidUntil = SomeOrders.Today.AddDays(10) };
        Assert.Null(order.Quote(offer, SomeOrders.Today, "Desk", TestShop.Now).Refusal);
        return order;
    }

    private static Order Accept(Order order) => order.Accept(SomeOrders.Today.AddDays(20), SomeOrders.Today, "Desk", TestShop.Now).Value!;

    private static string Text(Order order, OrderEventKind kind) => Letters.Of(order, order.History.Last(line => line.Kind == kind))!.Text;

    [GeneratedRegex(@"^- .*: \$([\d,.]+)\r?$", RegexOptions.Multiline)]
    private static partial Regex Money();
}
