using AngleSharp.Dom;
using Bunit;
using GrindShop.Shop.Allocating;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Web.Desk;
using GrindShop.Web.Floor;
using GrindShop.Web.Security;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Tests.Desk;

/// <summary>What the screens say of the blank for one waiting cam: what is free for it, why others are out, and that a good blank may go back.</summary>
public sealed class GivenBlankTests : IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly StaffShop _shop = new();

    private WaitingPiece _piece = null!;

    public async Task InitializeAsync()
    {
        await _shop.InitializeAsync();
        _piece = await _shop.AcceptNewAsync();
    }

    public Task DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task Lots_that_the_cam_does_not_come_out_of_are_not_offered()
    {
        var part = _piece.Cam.QuotedPartNumber!;
        await _shop.ReceiveAsync(part);
        foreach (var lot in (await _shop.Get<StockRoom>().ToCountAsync()).Where(lot => lot.PartNumber == part))
            await _shop.ThinAsync(lot.LotNumber);
        await using var browser = _shop.Browser("Imka Tolland", Policies.Desk);

        var order = browser.Render<OrderPage>(parameters => parameters.Add(page => page.Number, StaffShop.New));
        order.WaitForState(() => order.FindAll("#no-stock").Count == 1, Patience);

        Assert.StartsWith("0 in stock", order.Find("#free").TextContent, StringComparison.Ordinal);
        var line = Of(Waiting(browser)).QuerySelectorAll(".ranked tbody tr").First(row => row.TextContent.Contains(part, StringComparison.Ordinal));
        Assert.Contains("none is free now", line.TextContent, StringComparison.Ordinal);
        Assert.Null(line.QuerySelector("button"));
    }

    [Fact]
    public async Task Each_blank_that_is_out_says_why()
    {
        await using var browser = _shop.Browser("Imka Tolland", Policies.Desk);
        var outs = _piece.Ranked.Where(blank => !blank.Option.Fit.Usable).ToList();

        var said = Of(Waiting(browser)).QuerySelectorAll(".out li").Select(line => line.TextContent).ToList();

        Assert.NotEmpty(outs);
        Assert.Equal(outs.Select(blank => $"{blank.Option.Part.PartNumber} {blank.Why}"), said);
    }

    [Fact]
    public async Task The_desk_gives_a_blank_back_and_takes_another()
    {
        var job = await StartAsync();
        await using var browser = _shop.Browser("Imka Tolland", Policies.Desk);
        var page = browser.Render<OrderPage>(parameters => parameters.Add(page => page.Number, StaffShop.New));
        page.WaitForState(() => page.FindAll($"#give-back-{job.Code}").Count == 1, Patience);

        await GiveBackAsync(page, job.Code);

        page.WaitForState(() => page.FindAll("#start").Count == 1, Patience);
        Assert.Contains($"back in lot {job.BlankLot!.LotNumber}", page.Find("#said").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll($"#give-back-{job.Code}"));
        Assert.Single((await _shop.Get<StockRoom>().FindAsync(job.BlankLot.LotNumber))!.Movements, line => line is { Kind: StockMovementKind.Release, By: "Imka Tolland" });
    }

    [Fact]
    public async Task The_floor_gives_a_blank_back_until_it_is_cut()
    {
        var job = await StartAsync();
        await using var browser = _shop.Browser("Rolf Anstey", Policies.Floor);
        var page = browser.Render<JobPage>(parameters => parameters.Add(page => page.Code, job.Code));
        page.WaitForState(() => page.FindAll($"#give-back-{job.Code}").Count == 1, Patience);

        await GiveBackAsync(page, job.Code);

        page.WaitForState(() => page.FindAll("#result").Count == 1, Patience);
        Assert.Contains($"put its blank back to {job.BlankLot!.Location}", page.Find("#result").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("#done"));
        Assert.Contains(await _shop.Get<BatchAllocation>().WaitingAsync(), piece => piece.Order.Number == StaffShop.New);
        var floor = _shop.Get<JobFloor>();
        Assert.True((await floor.CompleteAsync(StaffShop.Job, (await floor.FindAsync(StaffShop.Job))!.Current!.Stage, "Rolf", "cut")).Succeeded);
        var cut = browser.Render<JobPage>(parameters => parameters.Add(page => page.Code, StaffShop.Job));
        cut.WaitForState(() => cut.FindAll("#step-title").Count == 1, Patience);
        Assert.Empty(cut.FindAll($"#give-back-{StaffShop.Job}"));
    }

    [Fact]
    public async Task The_inbox_counts_the_cams_that_wait()
    {
        await using var browser = _shop.Browser("Imka Tolland", Policies.Desk);
        var page = browser.Render<Inbox>();
        page.WaitForState(() => page.FindAll("#blanks b").Count == 1, Patience);
        Assert.Equal("2", page.Find("#blanks b").TextContent);
        Assert.Equal("Waiting for blanks, 2 cams", page.Find("#blanks").GetAttribute("aria-label"));
    }

    private static async Task GiveBackAsync<T>(IRenderedComponent<T> page, string code) where T : IComponent
    {
        await page.InvokeAsync(() => page.Find($"#give-back-why-{code}").InputAsync("Taken for the wrong order"));
        await page.InvokeAsync(() => page.Find($"#give-back-go-{code}").ClickAsync());
    }

    private static IRenderedComponent<WaitingPage> Waiting(BunitContext browser)
    {
        var page = browser.Render<WaitingPage>();
        page.WaitForState(() => page.FindAll(".piece").Count == 2, Patience);
        return page;
    }

    private static IElement Of(IRenderedComponent<WaitingPage> page) => page.FindAll(".piece").Single(piece => piece.TextContent.Contains(StaffShop.New, StringComparison.Ordinal));

    private async Task<Job> StartAsync()
    {
        await _shop.ReceiveAsync(_piece.Cam.QuotedPartNumber!);
        var job = (await _shop.Get<Allocation>().StartAsync(StaffShop.New, _piece.Order.Version, _piece.Cam.QuotedPartNumber!, "Imka")).Value!;
        return (await _shop.Get<JobFloor>().FindAsync(job.Code))!;
    }
}
