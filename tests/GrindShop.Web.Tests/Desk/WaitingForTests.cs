using Bunit;
using GrindShop.Shop.Allocating;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Web.Desk;
using GrindShop.Web.Security;

namespace GrindShop.Web.Tests.Desk;

/// <summary>Where blanks come in, whoever waits for such a blank is named, and nobody else.</summary>
public sealed class WaitingForTests : IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly StaffShop _shop = new();

    private WaitingPiece _waiting = null!;

    public async Task InitializeAsync()
    {
        await _shop.InitializeAsync();
        _waiting = await _shop.AcceptNewAsync();
    }

    public Task DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task A_receipt_names_the_orders_that_can_use_it()
    {
        await using var browser = _shop.Browser("Imka", Policies.Desk);
        var page = await NamingAsync(browser, await _shop.ReceiveAsync(Part));
        Assert.Contains($"/desk/orders/{StaffShop.New}", page.Find("#waiting-for").InnerHtml, StringComparison.Ordinal);
    }

    /// <summary>Moved from a lot that is waited for to one that is not, the list goes.</summary>
    [Fact]
    public async Task A_blank_that_nobody_can_use_names_nobody()
    {
        await using var browser = _shop.Browser("Imka", Policies.Desk);
        var page = await NamingAsync(browser, await _shop.ReceiveAsync(Part));
        await MovedAsync(page, await _shop.ReceiveAsync(_waiting.Ranked.First(blank => !blank.Option.Fit.Usable).Option.Part.PartNumber));
    }

    /// <summary>The cam would come out of the part as the catalog has it, but not out of this lot.</summary>
    [Fact]
    public async Task A_lot_that_measures_too_thin_names_nobody()
    {
        await using var browser = _shop.Browser("Imka", Policies.Desk);
        var lot = await _shop.ReceiveAsync(Part);
        var page = await NamingAsync(browser, lot);
        await MovedAsync(page, await _shop.ThinAsync(lot.LotNumber));
    }

    /// <summary>Two receipts one after the other: the second names who waits then.</summary>
    [Fact]
    public async Task A_second_lot_of_the_same_part_is_read_anew()
    {
        await using var browser = _shop.Browser("Imka", Policies.Desk);
        var page = await NamingAsync(browser, await _shop.ReceiveAsync(Part));
        var order = (await _shop.Get<OrderDesk>().FindAsync(StaffShop.New))!;
        Assert.True((await _shop.Get<Allocation>().StartAsync(order.Number, order.Version, Part, "Imka")).Succeeded);
        await MovedAsync(page, await _shop.ReceiveAsync(Part));
    }

    private string Part => _waiting.Cam.QuotedPartNumber!;

    private static async Task<IRenderedComponent<WaitingFor>> NamingAsync(BunitContext browser, BlankLot lot)
    {
        var page = browser.Render<WaitingFor>(parameters => parameters.Add(c => c.Lot, lot));
        await page.WaitForStateAsync(() => page.FindAll("#waiting-for li").Count > 0, Patience);
        return page;
    }

    private static Task MovedAsync(IRenderedComponent<WaitingFor> page, BlankLot lot)
    {
        page.Render(parameters => parameters.Add(c => c.Lot, lot));
        return page.WaitForStateAsync(() => page.FindAll("#waiting-for").Count == 0, Patience);
    }
}
