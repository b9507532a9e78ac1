using Bunit;
using GrindShop.Shop.Blanks;
using GrindShop.Web.Office;
using GrindShop.Web.Security;
using GrindShop.Web.Tests.Desk;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Web.Tests.Office;

public sealed class LotActsTests(StaffShop shop) : IClassFixture<StaffShop>
{
    [Fact]
    public async Task A_heat_number_corrected_by_two_is_written_by_the_second_only_after_seeing_the_first()
    {
        var lot = (await shop.Get<Receiving>().ReceiveAsync(new Receipt { PartNumber = "RV8R-516-08", Quantity = 3, Location = "A1", HeatNumber = "H1", Key = "two" }, "Desk")).Value!;
        await using var browser = shop.Browser("Imka Tolland", Policies.Staff);
        browser.Services.AddTransient<BlankBook>();
        var page = browser.Render<LotPage>(parameters => parameters.Add(open => open.Number, lot.LotNumber));
        page.WaitForState(() => page.FindAll("#act").Count == 1, TimeSpan.FromSeconds(30));
        await TypeAsync(page, "#act", "correct");
        Assert.Equal(("H1", "60"), (page.Find("#act-heat").GetAttribute("value"), page.Find("#act-heat").GetAttribute("maxlength")));
        await TypeAsync(page, "#act-heat", "H9");
        await TypeAsync(page, "#act-why", "misread");

        await shop.Get<StockRoom>().CorrectAsync(new(lot.LotNumber, null, "Piers Oakham", "p"), "H2", "C-7", "the mill called");
        await page.InvokeAsync(() => page.FindComponent<LotSamples>().Instance.Act("", (_, _) => Task.FromResult<Shop.Outcome<StockMovement>>(new Shop.Refusal("x", "x"))));
        Assert.Equal(("H9", "C-7"), (page.Find("#act-heat").GetAttribute("value"), page.Find("#act-certificate").GetAttribute("value")));
        await page.InvokeAsync(() => page.Find("#act-go").ClickAsync());

        var told = page.Find("[role=alert].problem:not(#refusal)").TextContent;
        Assert.Contains("Piers Oakham", told, StringComparison.Ordinal);
        Assert.Contains("heat number H2", told, StringComparison.Ordinal);
        Assert.Equal("H2", (await shop.Get<StockRoom>().FindAsync(lot.LotNumber))!.HeatNumber);

        await page.InvokeAsync(() => page.Find("#act-go").ClickAsync());
        page.WaitForState(() => page.FindAll("#done").Count == 1, TimeSpan.FromSeconds(30));
        var read = (await shop.Get<StockRoom>().FindAsync(lot.LotNumber))!;
        Assert.Equal(("H9", "C-7"), (read.HeatNumber, read.Certificate));
    }

    private static Task TypeAsync(IRenderedComponent<LotPage> page, string box, string text) => page.InvokeAsync(() => page.Find(box).ChangeAsync(new() { Value = text }));
}
