using Bunit;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Web.Desk;
using GrindShop.Web.Security;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;

namespace GrindShop.Web.Tests.Desk;

public sealed class InboxTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Open_orders_are_listed_and_found_while_typing()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = Open(browser);
        Assert.Equal([StaffShop.InWork, StaffShop.Quoted, StaffShop.Accepted], Numbers(page).Take(3));
        Assert.DoesNotContain(StaffShop.Shipped, Numbers(page));
        await page.InvokeAsync(() => page.Find("#find").InputAsync("c1004"));
        page.WaitForState(() => page.FindAll("#results a.order").Count > 0, Patience);
        Assert.Equal(StaffShop.Accepted, page.Find("#results a.order").TextContent);
        Assert.Empty(Numbers(page));
        await page.InvokeAsync(() => page.Find("#find").InputAsync("no such thing"));
        page.WaitForState(() => page.FindAll("#empty").Count > 0, Patience);
        Assert.Contains("no such thing", page.Find("#empty").TextContent);
        await page.InvokeAsync(() => page.Find("#find").InputAsync(""));
        Assert.NotEmpty(Numbers(page));
    }

    [Fact]
    public async Task A_change_by_somebody_else_appears_by_itself()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var listener = browser.Services.GetRequiredService<ChangeListener>();
        await listener.StartAsync(default);
        await shop.IsListeningAsync();
        var page = Open(browser);
        var desk = shop.Get<OrderDesk>();
        var order = (await desk.FindAsync(StaffShop.New))!;
        Assert.True((await desk.DeclineAsync(order.Number, order.Version, "no such gear", "Piers Oakham")).Succeeded);
        page.WaitForState(() => !Numbers(page).Contains(StaffShop.New), Patience);
        await listener.StopAsync(default);
    }

    [Fact]
    public async Task Order_is_taken_with_one_click_and_then_stands_under_mine()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = Open(browser);
        Assert.Equal("0", Count(page, "Mine"));

        await page.InvokeAsync(() => page.Find($"button[aria-label='Take {StaffShop.Accepted}']").ClickAsync());

        Assert.Equal("1", Count(page, "Mine"));
        Assert.Contains(StaffShop.Accepted, page.Find("#said").TextContent, StringComparison.Ordinal);
        browser.Services.GetRequiredService<NavigationManager>().NavigateTo("/desk?view=mine");
        page.WaitForState(() => Numbers(page).Count == 1, Patience);
        Assert.Equal([StaffShop.Accepted], Numbers(page));
        Assert.Equal(("Imka Tolland", "Taken."), await LastAsync(StaffShop.Accepted));
    }

    [Fact]
    public async Task Order_that_somebody_has_just_taken_is_not_taken_from_them()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = Open(browser);
        var order = (await shop.Get<OrderDesk>().FindAsync(StaffShop.InWork))!;
        Assert.True((await shop.Get<CareDesk>().AssignAsync(order.Number, order.Version, "Piers Oakham", "Piers Oakham")).Succeeded);

        await page.InvokeAsync(() => page.Find($"button[aria-label='Take {StaffShop.InWork}']").ClickAsync());

        Assert.Contains("Piers Oakham changed this order", page.Find("#refusal").TextContent, StringComparison.Ordinal);
        Assert.Equal("Piers Oakham", (await shop.Get<OrderDesk>().FindAsync(StaffShop.InWork))!.AssignedTo);
    }

    [Fact]
    public async Task Snoozed_order_leaves_the_list_and_stands_under_snoozed_with_its_day_and_reason()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var order = (await shop.Get<OrderDesk>().FindAsync(StaffShop.Quoted))!;
        Assert.True((await shop.Get<CareDesk>().SnoozeAsync(order.Number, order.Version, DateTime.UtcNow.AddDays(3), "asks his wife", "Imka Tolland")).Succeeded);
        var page = Open(browser);
        Assert.DoesNotContain(StaffShop.Quoted, Numbers(page));

        browser.Services.GetRequiredService<NavigationManager>().NavigateTo("/desk?view=snoozed");

        page.WaitForState(() => Numbers(page) is [StaffShop.Quoted], Patience);
        Assert.Contains("asks his wife", page.Find("#inbox .resting").TextContent, StringComparison.Ordinal);
        order = (await shop.Get<OrderDesk>().FindAsync(StaffShop.Quoted))!;
        Assert.True((await shop.Get<CareDesk>().WakeAsync(order.Number, order.Version, "Imka Tolland")).Succeeded);
    }

    [Fact]
    public async Task Snoozed_order_comes_back_on_an_open_page_when_its_time_has_come()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var clock = new FakeTimeProvider(DateTimeOffset.UtcNow);
        browser.Services.AddSingleton<TimeProvider>(clock);
        var order = (await shop.Get<OrderDesk>().FindAsync(StaffShop.Quoted))!;
        Assert.True((await shop.Get<CareDesk>().SnoozeAsync(order.Number, order.Version, DateTime.UtcNow.AddHours(1), "asks his wife", "Imka Tolland")).Succeeded);
        var page = Open(browser);
        Assert.DoesNotContain(StaffShop.Quoted, Numbers(page));

        clock.Advance(TimeSpan.FromDays(1));

        page.WaitForState(() => Numbers(page).Contains(StaffShop.Quoted), Patience);
        order = (await shop.Get<OrderDesk>().FindAsync(StaffShop.Quoted))!;
        Assert.True((await shop.Get<CareDesk>().WakeAsync(order.Number, order.Version, "Imka Tolland")).Succeeded);
    }

    [Fact]
    public async Task Call_is_done_with_one_click_and_a_line_of_history()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        Assert.True((await shop.Get<CareDesk>().PlanCallAsync(StaffShop.Accepted, new CallEntry(DateTime.UtcNow.AddHours(2), "555-0177", "his gear", "key"), "Piers Oakham")).Succeeded);
        browser.Services.GetRequiredService<NavigationManager>().NavigateTo("/desk?view=calls");
        var page = browser.Render<Inbox>();
        page.WaitForState(() => page.FindAll("#calls li").Count == 1, Patience);
        Assert.Contains("written down by Piers Oakham", page.Find("#calls").TextContent, StringComparison.Ordinal);

        await page.InvokeAsync(() => page.Find("#calls [data-key=n]").ClickAsync());
        Assert.Contains("no answer once", page.Find("#calls").TextContent, StringComparison.Ordinal);
        await page.InvokeAsync(() => page.Find("#calls [data-key=d]").ClickAsync());

        Assert.Equal("0", Count(page, "Call back"));
        Assert.Contains("Nobody waits for a call", page.Find("#empty").TextContent, StringComparison.Ordinal);
        Assert.Equal(("Imka Tolland", "Called back at 555-0177: his gear"), await LastAsync(StaffShop.Accepted));
    }

    [Fact]
    public async Task Buttons_of_the_calls_rest_while_one_is_at_work()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var call = new CallRow("C1", OrderState.New, "Una", null, 1, DateTimeOffset.UtcNow, "555-0177", "his gear", 0, null, "Piers");
        var settings = (await shop.Get<Catalog>().ContentAsync()).Rules.Settings;

        var list = browser.Render<CallList>(given => given.Add(it => it.Calls, [call]).Add(it => it.Shop, settings).Add(it => it.Now, DateTimeOffset.UtcNow).Add(it => it.Busy, true));

        Assert.Equal(2, list.FindAll("#calls button[disabled]").Count);
    }

    [Fact]
    public async Task Closed_orders_have_their_list_and_count()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        browser.Services.GetRequiredService<NavigationManager>().NavigateTo("/desk?view=closed");
        var page = Open(browser);

        Assert.Contains(StaffShop.Shipped, Numbers(page));
        Assert.Equal($"{Numbers(page).Count}", Count(page, "Closed"));
    }

    private static string Count(IRenderedComponent<Inbox> page, string list) =>
        page.FindAll("#views a").Single(link => link.TextContent.StartsWith(list, StringComparison.Ordinal)).QuerySelector("b")!.TextContent;

    private async Task<(string By, string What)> LastAsync(string number) =>
        (await shop.Get<OrderDesk>().FindAsync(number))!.History[^1] is var line ? (line.By, line.What) : default;

    private static List<string> Numbers(IRenderedComponent<Inbox> page) => [.. page.FindAll("#inbox a.order").Select(link => link.TextContent)];

    private static IRenderedComponent<Inbox> Open(BunitContext browser)
    {
        var page = browser.Render<Inbox>();
        page.WaitForState(() => page.FindAll("#inbox").Count == 1, Patience);
        return page;
    }
}
