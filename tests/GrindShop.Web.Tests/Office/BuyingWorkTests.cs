using GrindShop.Shop.Buying;
using GrindShop.Web.Office;
using GrindShop.Web.Tests.Desk;
using Xunit;

namespace GrindShop.Web.Tests.Office;

/// <summary>Two people on one purchase order.</summary>
public sealed class BuyingWorkTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private const string Part = "RV8R-516-08", Vendor = "BRISKMILL";

    private static readonly DateOnly Day = DateOnly.FromDateTime(DateTime.UtcNow).AddDays(40);

    private Purchasing Purchasing => shop.Get<Purchasing>();

    [Fact]
    public async Task The_second_is_told_what_changed_and_decides_again_on_the_newer_state()
    {
        var (one, two) = await TwoAsync("race");
        Assert.True(await WantAsync(one, 6, "Hollis"));

        Assert.False(await WantAsync(two, 9, "Imka"));
        Assert.Equal("stale", two.Refusal!.Code);
        Assert.Contains("Hollis changed this order", two.Refusal.Reason);
        Assert.Equal(6, Assert.Single(two.Order!.Lines).Quantity);

        Assert.True(await WantAsync(two, 9, "Imka"));
        Assert.Null(two.Refusal);
    }

    [Fact]
    public async Task A_page_that_hears_of_a_change_says_whose_it_was()
    {
        var (one, two) = await TwoAsync("heard");
        Assert.True(await WantAsync(one, 6, "Hollis"));
        await two.HearAsync();
        Assert.StartsWith("Hollis: 6 blanks RV8R-516-08", two.Said);
    }

    private Task<bool> WantAsync(BuyingWork work, int quantity, string by) =>
        work.ActAsync(order => Purchasing.WantAsync(order.Number, order.Version, Part, new PurchaseWish(quantity, 174m, 0, Day), by), "Done.");

    private async Task<(BuyingWork One, BuyingWork Two)> TwoAsync(string key)
    {
        var draft = await Purchasing.DraftAsync(Vendor, new Dictionary<string, PurchaseWish>(), key, "By hand.", "Hollis");
        var (one, two) = (new BuyingWork(Purchasing, draft.Value!.Number), new BuyingWork(Purchasing, draft.Value.Number));
        await one.HearAsync();
        await two.HearAsync();
        return (one, two);
    }
}
