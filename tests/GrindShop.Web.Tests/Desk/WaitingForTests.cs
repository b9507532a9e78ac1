using Bunit;
using GrindShop.Shop.Allocating;
using GrindShop.Web.Desk;
using GrindShop.Web.Security;

namespace GrindShop.Web.Tests.Desk;

/// <summary>Where blanks come in, whoever waits for such a blank is named, and nobody else.</summary>
public sealed class WaitingForTests(StaffShop shop) : IClassFixture<StaffShop>
{
    [Fact]
    public async Task A_receipt_names_the_orders_that_can_use_it()
    {
        var waiting = Assert.Single(await shop.Get<BatchAllocation>().WaitingAsync(), piece => piece.Order.Number == StaffShop.Accepted);
        await using var browser = shop.Browser("Imka", Policies.Desk);

        var page = browser.Render<WaitingFor>(parameters => parameters.Add(c => c.PartNumber, waiting.Ranked[0].Option.Part.PartNumber));

        page.WaitForState(() => page.FindAll("#waiting-for li").Count > 0, TimeSpan.FromSeconds(30));
        Assert.Contains($"/desk/orders/{StaffShop.Accepted}", page.Find("#waiting-for").InnerHtml, StringComparison.Ordinal);
    }

    /// <summary>Moved from a blank that is waited for to one that is not, the list goes.</summary>
    [Fact]
    public async Task A_blank_that_nobody_can_use_names_nobody()
    {
        var waiting = Assert.Single(await shop.Get<BatchAllocation>().WaitingAsync(), piece => piece.Order.Number == StaffShop.Accepted);
        var wrong = waiting.Ranked.First(blank => !blank.Option.Fit.Usable).Option.Part.PartNumber;
        await using var browser = shop.Browser("Imka", Policies.Desk);
        var page = browser.Render<WaitingFor>(parameters => parameters.Add(c => c.PartNumber, waiting.Ranked[0].Option.Part.PartNumber));
        page.WaitForState(() => page.FindAll("#waiting-for li").Count > 0, TimeSpan.FromSeconds(30));

        page.Render(parameters => parameters.Add(c => c.PartNumber, wrong));

        page.WaitForState(() => page.FindAll("#waiting-for").Count == 0, TimeSpan.FromSeconds(30));
    }
}
