using CsCheck;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Demo;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;

namespace GrindShop.Shop.Tests.Orders;

/// <summary>Every public answer of many specifications, in words that need no dictionary.</summary>
public sealed class PlainWordsTests
{
    private static readonly Letters Letters = new(new CatalogContent(SeedFiles.Scenario.Families, Shelf.Blanks, Shelf.Rules), "https://shop.example");

    [Fact]
    public void Problems_questions_verdicts_and_letters_have_no_shorthand()
    {
        var usable = 0;
        RandomSpecs.Likely.Sample(spec => { Interlocked.Add(ref usable, Check(spec) ? 1 : 0); }, iter: 60, threads: 2);
        Assert.True(usable > 0);
    }

    [Fact]
    public void Grind_that_every_kind_of_blank_is_tried_for_is_answered_without_shorthand() => Assert.All(Shelf.Blanks.Where(blank => blank.Part.Nominal is not null), blank =>
        Assert.All(Said(Shelf.Judge(Shelf.Nominal(blank), _ => 1)), Shorthand.None));

    [Fact]
    public void Soft_blank_is_explained_in_a_sentence() =>
        Assert.Contains(Shelf.Blanks.Where(blank => blank.Part is { IsSoft: true, Nominal: not null }).SelectMany(blank => Said(Shelf.Judge(Shelf.Nominal(blank), _ => 1))), words =>
            words == "The blank is soft: it is rough ground, hardened at the heat-treater's, and then finish ground.");

    private static bool Check(CamSpec spec)
    {
        var completed = Wishes.Completed(spec);
        Assert.All(completed.Problems.Concat(completed.Needed).Select(problem => problem.Message), Shorthand.None);
        Assert.All(SpecQuestions.Of(spec, SeedFiles.Scenario.Families.FirstOrDefault(family => family.Code == spec.EngineFamily)).Select(question => question.Text), Shorthand.None);
        if (completed.Grind is not { } grind)
            return false;
        var answer = Shelf.Judge(grind);
        Assert.All(Said(answer), Shorthand.None);
        Assert.All(Told(spec, answer), Shorthand.None);
        return answer.Best is not null;
    }

    private static IEnumerable<string> Said(FeasibilityAnswer answer) => [.. answer.Reasons, .. answer.Blanks.SelectMany(fit => fit.Reasons), .. answer.Blanks.Select(fit => fit.Gear.Reason)];

    private static IEnumerable<string> Told(CamSpec spec, FeasibilityAnswer answer)
    {
        var order = Order.Receive(new OrderNumbers("C1", "TRACK"), SomeOrders.Enquiry("key") with { Spec = spec }, new Customer { Name = "Una", Since = TestShop.Now }, answer, "Una", TestShop.Now);
        if (answer.Best is { } best)
            Assert.Null(order.Quote(best.PartNumber, SomeOrders.Lines, "Desk", TestShop.Now).Refusal);
        return order.History.Select(line => Letters.Of(order, line)).OfType<GrindShop.Shop.Mail.Letter>().Select(letter => letter.Text);
    }
}
