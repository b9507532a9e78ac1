using Bunit;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Web.Desk;
using GrindShop.Web.Security;

namespace GrindShop.Web.Tests.Desk;

public sealed class OrderPageTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task The_second_of_two_sees_the_refusal_and_keeps_what_was_typed()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = Open(browser, StaffShop.New);
        await page.InvokeAsync(() => page.Find("#correct").ClickAsync());
        await page.InvokeAsync(() => page.Find("#lsa").InputAsync("113"));
        await CorrectElsewhereAsync(lsa: 109, use: "marine");

        await page.InvokeAsync(() => page.Find("#save-spec").ClickAsync());
        page.WaitForState(() => page.FindAll("#refusal").Count == 1, Patience);
        Assert.Contains("Piers Oakham", page.Find("#refusal").TextContent);
        Assert.Contains("109 cam deg", page.Find("#newer").TextContent);
        Assert.Equal("113", page.Find("#lsa").GetAttribute("value"));

        await page.InvokeAsync(() => page.Find("#load-newer").ClickAsync());
        Assert.Equal("113", page.Find("#lsa").GetAttribute("value"));
        Assert.Equal("marine", page.Find("#use").GetAttribute("value"));
        await page.InvokeAsync(() => page.Find("#save-spec").ClickAsync());
        page.WaitForState(() => page.FindAll("#save-spec").Count == 0, Patience);
        var saved = await shop.Get<OrderDesk>().FindAsync(StaffShop.New);
        Assert.Equal((113, "marine"), (saved!.First.Spec.LobeSeparationCamDeg, saved.First.Spec.Use));
    }

    [Fact]
    public async Task From_a_quote_to_a_job_by_the_next_act_each_time()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = Open(browser, StaffShop.Quoted);
        page.WaitForState(() => page.FindAll("#accept").Count == 1, Patience);
        await page.InvokeAsync(() => page.Find("#accept").ClickAsync());
        page.WaitForState(() => page.FindAll("#start").Count == 1, Patience);
        await page.InvokeAsync(() => page.Find("#start").ClickAsync());
        page.WaitForState(() => page.FindAll("#traveler").Count == 1, Patience);
        Assert.Equal("/papers/traveler/J1003.pdf", page.Find("#traveler").GetAttribute("href"));
        var job = await shop.Get<JobFloor>().FindAsync("J1003");
        Assert.Equal(OrderState.InWork, job!.Order.State);
        Assert.Equal("Imka Tolland", job.Order.History[^1].By);
    }

    [Fact]
    public async Task Another_number_of_pieces_is_agreed_after_it_was_shown_what_it_means()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = Open(browser, StaffShop.Accepted);
        await page.InvokeAsync(() => page.Find("#revise").ClickAsync());
        await page.InvokeAsync(() => page.Find("#revise-pieces").ChangeAsync("2"));
        await page.InvokeAsync(() => page.Find("#revise-why").ChangeAsync("a second engine"));
        await page.InvokeAsync(() => page.Find("#look").ClickAsync());
        page.WaitForState(() => page.FindAll("#effect").Count == 1, Patience);
        Assert.Contains("2 pieces are wanted now instead of 1; 2 of them wait for a blank.", page.Find("#effect").TextContent);
        Assert.Contains("the rules' difference is", page.Find("#effect").TextContent);

        await page.InvokeAsync(() => page.Find("#agree").ClickAsync());
        page.WaitForState(() => page.FindAll("#revision-1").Count == 1, Patience);
        Assert.Contains("Pieces: 1 → 2", page.Find("#revision-1").TextContent);
        Assert.Equal(2, (await shop.Get<OrderDesk>().FindAsync(StaffShop.Accepted))!.First.Waiting);
    }

    [Fact]
    public async Task A_price_is_shown_line_by_line_and_quoted_as_shown()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        await CorrectElsewhereAsync(lsa: 110, use: null);
        var page = Open(browser, StaffShop.New);
        page.WaitForState(() => page.FindAll("#quote").Count == 1, Patience);
        await page.InvokeAsync(() => page.Find("#adder-RUSH").ChangeAsync(true));
        var sum = page.Find(".price-lines .sum").TextContent;
        await page.InvokeAsync(() => page.Find("#quote").ClickAsync());
        page.WaitForState(() => page.FindAll("#accept").Count == 1, Patience);
        var order = await shop.Get<OrderDesk>().FindAsync(StaffShop.New);
        Assert.Equal(sum, PriceRules.Dollars(order!.Price));
        Assert.Contains(order.PriceLines, line => line.Code == "RUSH");
    }

    [Fact]
    public async Task Declining_without_a_reason_is_refused_in_words()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = Open(browser, StaffShop.New);
        await page.InvokeAsync(() => page.Find("#decline").ClickAsync());
        page.WaitForState(() => page.FindAll("#refusal").Count == 1, Patience);
        Assert.Contains("Say why", page.Find("#refusal").TextContent);
    }

    [Fact]
    public async Task An_unknown_number_is_said()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = browser.Render<OrderPage>(parameters => parameters.Add(order => order.Number, "C9"));
        page.WaitForState(() => page.FindAll("#unknown").Count == 1, Patience);
    }

    private async Task CorrectElsewhereAsync(double lsa, string? use)
    {
        var desk = shop.Get<OrderDesk>();
        var order = (await desk.FindAsync(StaffShop.New))!;
        var spec = order.First.Spec with { LobeSeparationCamDeg = lsa, Use = use };
        Assert.True((await desk.CorrectAsync(order.Number, order.Version, spec, "asked", "Piers Oakham")).Succeeded);
    }

    private static IRenderedComponent<OrderPage> Open(BunitContext browser, string number)
    {
        var page = browser.Render<OrderPage>(parameters => parameters.Add(order => order.Number, number));
        page.WaitForState(() => page.FindAll("#next-title").Count == 1, Patience);
        return page;
    }
}
