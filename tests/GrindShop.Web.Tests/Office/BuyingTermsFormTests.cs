using Bunit;
using GrindShop.Shop.Buying;
using GrindShop.Web.Office;
using GrindShop.Web.Security;
using GrindShop.Web.Tests.Desk;

namespace GrindShop.Web.Tests.Office;

/// <summary>Two people on the same assumptions, or on the same part's terms: the second sees what changed, keeps what was typed and may save again.</summary>
public sealed class BuyingTermsFormTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private const string Part = "RV8R-516-08";

    private BuyingTerms Terms => shop.Get<BuyingTerms>();

    private BuyingBook Book => shop.Get<BuyingBook>();

    [Fact]
    public async Task Assumptions()
    {
        await using var browser = shop.Browser("Petra Vane", Policies.Office);
        var rules = await Book.RulesAsync();
        var form = browser.Render<BuyingAssumed>(with => with.Add(each => each.Rules, rules));
        await form.InvokeAsync(() => form.Find("#storage").ChangeAsync("2.25"));
        Assert.True((await Terms.AssumeAsync(rules.Version, new BuyingAssumptions(.97, rules.OrderCost, rules.CostOfCapital, 4m, rules.ObsolescenceAYear, rules.MostYearsOfCover))).Succeeded);

        await form.InvokeAsync(() => form.Find("#assume").ClickAsync(new()));
        Assert.Contains("service level from 95 to 97; storage from 1.5 to 4.", form.Find("#assumed-said").TextContent, StringComparison.Ordinal);
        Assert.Equal(("97", "2.25"), (form.Find("#service").GetAttribute("value"), form.Find("#storage").GetAttribute("value")));
        Assert.Equal(4m, (await Book.RulesAsync()).StorageAYear);

        await form.InvokeAsync(() => form.Find("#assume").ClickAsync(new()));
        Assert.Contains("Saved", form.Find("#assumed-said").TextContent, StringComparison.Ordinal);
        Assert.Equal((.97, 2.25m), await Book.RulesAsync() is var now ? (now.ServiceLevel, now.StorageAYear) : default);
    }

    [Fact]
    public async Task Terms_of_a_part()
    {
        await using var browser = shop.Browser("Petra Vane", Policies.Office);
        Assert.True((await Terms.SellAsync(Part, (await Terms.FindAsync(Part))!.Version, new TermsWanted(1, 0, [], null))).Succeeded);
        var need = (await Book.NeedsAsync()).Single(need => need.Part.PartNumber == Part);
        var form = browser.Render<BuyingPart>(with => with.Add(each => each.Need, need).Add(each => each.Rules, need.Rules));
        await form.InvokeAsync(() => form.Find("#setup").ChangeAsync("40"));
        Assert.True((await Terms.SellAsync(Part, need.Terms.Version, new TermsWanted(2, 0, [new(10, 160m), new(50, 140m)], .9))).Succeeded);

        await form.InvokeAsync(() => form.Find("#save-terms").ClickAsync(new()));
        Assert.Contains("multiple from 1 to 2; service level from none to 90; price breaks from none to 10 160.00, 50 140.00.", form.Find("#terms-said").TextContent, StringComparison.Ordinal);
        Assert.Equal(("2", "40"), (form.Find("#multiple").GetAttribute("value"), form.Find("#setup").GetAttribute("value")));

        await form.InvokeAsync(() => form.Find("#save-terms").ClickAsync(new()));
        Assert.Contains("Saved", form.Find("#terms-said").TextContent, StringComparison.Ordinal);
        var saved = (await Terms.FindAsync(Part))!;
        Assert.Equal((2, 40m, .9, 2), (saved.Multiple, saved.SetupCharge, saved.ServiceLevel, saved.PriceBreaks.Count));
    }
}
