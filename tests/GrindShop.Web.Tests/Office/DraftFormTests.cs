using GrindShop.Shop.Buying;
using GrindShop.Web.Office;
using GrindShop.Web.Tests.Desk;

namespace GrindShop.Web.Tests.Office;

/// <summary>A part on a purchase order by hand: what it costs follows how many are ordered.</summary>
public sealed class DraftFormTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private const string Part = "RV8R-516-08", Vendor = "BRISKMILL";

    private static readonly TermsWanted Sold = new(5, 0, [new(25, 150m), new(100, 120m)], null);

    [Fact]
    public async Task Price_and_hint_follow_the_quantity_over_each_break()
    {
        var form = new DraftForm(await NeedAsync(), null);
        foreach (var (quantity, price) in new[] { ("20", "174"), ("25", "150"), ("99", "150"), ("100", "120"), ("5", "174") })
        {
            form.Quantity = quantity;
            Assert.Equal(price, form.Price);
            Assert.Equal($"By the terms for {quantity}: ${price}.00", form.PriceHint);
        }
        form.Quantity = "many";
        Assert.Equal("174", form.Price);
        Assert.Contains("once a number", form.PriceHint, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_starts_with_a_quantity_that_is_sold_at_its_price()
    {
        var need = await NeedAsync();
        var form = new DraftForm(need, null);
        var quantity = int.Parse(form.Quantity, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Null(need.Terms.Unusual(quantity));
        Assert.Equal($"{need.Terms.UnitPrice(quantity)}", $"{decimal.Parse(form.Price, System.Globalization.CultureInfo.InvariantCulture):0.00}");
    }

    [Fact]
    public async Task A_price_typed_by_hand_stays_until_it_is_emptied()
    {
        var form = new DraftForm(await NeedAsync(), null) { Price = "161.50", Quantity = "100" };
        Assert.Equal(("161.50", "By the terms for 100: $120.00"), (form.Price, form.PriceHint));
        form.Price = " ";
        form.Quantity = "25";
        Assert.Equal("150", form.Price);
    }

    [Fact]
    public async Task What_stands_on_the_draft_at_another_price_keeps_it()
    {
        var need = await NeedAsync();
        var form = new DraftForm(need, await LineAsync(30, 155m, "own"));
        Assert.Equal(("30", "155"), (form.Quantity, form.Price));
        form.Quantity = "100";
        Assert.Equal("155", form.Price);

        form = new DraftForm(need, await LineAsync(30, 150m, "terms")) { Quantity = "100" };
        Assert.Equal("120", form.Price);
    }

    private async Task<PartNeed> NeedAsync()
    {
        var terms = shop.Get<BuyingTerms>();
        Assert.True((await terms.SellAsync(Part, (await terms.FindAsync(Part))!.Version, Sold)).Succeeded);
        return (await shop.Get<BuyingBook>().NeedsAsync()).Single(need => need.Part.PartNumber == Part);
    }

    private async Task<PurchaseLine> LineAsync(int quantity, decimal price, string key)
    {
        var wish = new PurchaseWish(quantity, price, 0, DateOnly.FromDateTime(DateTime.UtcNow).AddDays(40));
        return (await shop.Get<Purchasing>().DraftAsync(Vendor, new Dictionary<string, PurchaseWish> { [Part] = wish }, key, "By hand.", "Owner")).Value!.Lines[0];
    }
}
