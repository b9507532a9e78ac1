using Bunit;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Web.Desk;
using GrindShop.Web.Security;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Web.Tests.Desk;

/// <summary>Two people of the desk on the work of one cam.</summary>
public sealed class CamWorkTests : IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly StaffShop _shop = new();

    public Task InitializeAsync() => _shop.InitializeAsync();

    public Task DisposeAsync() => _shop.DisposeAsync();

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task What_is_half_typed_stays_when_another_page_saves(bool isHeard)
    {
        await using var imkas = _shop.Browser("Imka Tolland", Policies.Desk);
        await using var piers = _shop.Browser("Piers Oakham", Policies.Desk);
        await SetAsync(new CamEntry { Kind = WorkKind.Regrind, Spec = (await FindAsync()).First.Spec, Quantity = 1, ReceivedCondition = "Worn." });
        var listener = imkas.Services.GetRequiredService<ChangeListener>();
        if (isHeard)
        {
            await listener.StartAsync(default);
            await _shop.IsListeningAsync();
        }
        var (hers, his) = (Open(imkas), Open(piers));
        await ChangeAsync(hers, "#m-circle", "1.125");
        await ChangeAsync(hers, "#m-intake-lift", ".310");
        await ChangeAsync(hers, "#condition", "Worn, gear pitted.");

        await ChangeAsync(his, "#pieces", "3");
        await his.InvokeAsync(() => his.Find("#save-work").ClickAsync());
        his.WaitForState(() => his.FindAll("#said").Count == 1, Patience);
        if (isHeard)
            hers.WaitForState(() => Value(hers, "#pieces") == "3", Patience);
        else
            await LoadNewerAsync(hers);

        Assert.Equal(("1.125", "0.31", "Worn, gear pitted.", "3"), (Value(hers, "#m-circle"), Value(hers, "#m-intake-lift"), Value(hers, "#condition"), Value(hers, "#pieces")));
        await hers.InvokeAsync(() => hers.Find("#save-work").ClickAsync());
        hers.WaitForState(() => hers.Find("#said").TextContent.Contains("saved", StringComparison.Ordinal), Patience);
        Assert.Equal((3, "Worn, gear pitted."), (await FindAsync()).First is var cam ? (cam.Quantity, cam.ReceivedCondition) : default);
        await listener.StopAsync(default);
    }

    [Fact]
    public async Task Marks_and_gears_that_are_typed_stay_when_another_changes_the_pieces()
    {
        await SetAsync(new CamEntry { Kind = WorkKind.GearReplacement, Spec = (await FindAsync()).First.Spec, Quantity = 1, ReceivedCondition = "Worn.", Gear = new GearSwap { Marks = "M-1", Old = CamGear.PressedIron, New = CamGear.PressedIron } });
        var (was, newer) = (WorkDraft.Of((await FindAsync()).First), WorkDraft.Of((await FindAsync()).First));
        var typed = WorkDraft.Of((await FindAsync()).First);
        typed.Gear.Marks = "M-14";
        (newer.Quantity, newer.Gear.Marks, newer.Gear.New) = (2, "M-2", CamGear.Steel);

        typed.Follow(was, newer);

        Assert.Equal((2, "M-14", CamGear.Steel), (typed.Quantity, typed.Gear.Marks, typed.Gear.New));
    }

    [Fact]
    public async Task Own_question_is_about_the_cam_that_was_chosen_and_by_default_about_the_first_that_is_there()
    {
        var order = await FindAsync();
        var desk = _shop.Get<OrderDesk>();
        foreach (var _ in Enumerable.Range(0, 2))
            Assert.Null((await desk.AddCamAsync(order.Number, (await FindAsync()).Version, order.First.Entry with { Kind = WorkKind.NewGrind }, "Piers Oakham")).Refusal);
        Assert.Null((await desk.RemoveCamAsync(order.Number, (await FindAsync()).Version, 1, "Piers Oakham")).Refusal);
        var (first, last) = ((await FindAsync()).Cams[0].Ordinal, (await FindAsync()).Cams[^1].Ordinal);
        await using var browser = _shop.Browser("Imka Tolland", Policies.Desk);
        var page = Open(browser);

        foreach (var (words, choose, about) in new[] { ("Which boat?", false, first), ("Which gear?", true, last) })
        {
            foreach (var box in page.FindAll("#questions input[type=checkbox]").Where(box => box.HasAttribute("checked")).Select(box => box.Id).ToList())
                await page.InvokeAsync(() => page.Find($"#{box}").ChangeAsync(false));
            await page.InvokeAsync(() => page.Find("#ask-own").InputAsync(words));
            if (choose)
                await ChangeAsync(page, "#ask-own-cam", $"{last}");
            await page.InvokeAsync(() => page.Find("#ask").ClickAsync());
            page.WaitForState(() => page.FindAll("#asked .text").Any(text => text.TextContent.Contains(words, StringComparison.Ordinal)), Patience);
            Assert.Equal(about, (await FindAsync()).Questions[^1].Cam);
        }
    }

    private static async Task LoadNewerAsync(IRenderedComponent<OrderPage> page)
    {
        await page.InvokeAsync(() => page.Find("#save-work").ClickAsync());
        page.WaitForState(() => page.FindAll("#load-newer").Count == 1, Patience);
        await page.InvokeAsync(() => page.Find("#load-newer").ClickAsync());
    }

    private static Task ChangeAsync(IRenderedComponent<OrderPage> page, string selector, string value) => page.InvokeAsync(() => page.Find(selector).ChangeAsync(value));

    private static string? Value(IRenderedComponent<OrderPage> page, string selector) => page.Find(selector).GetAttribute("value");

    private async Task SetAsync(CamEntry entry) => Assert.Null((await _shop.Get<OrderDesk>().SetWorkAsync(StaffShop.New, (await FindAsync()).Version, (await FindAsync()).First.Ordinal, entry, "Piers Oakham")).Refusal);

    private async Task<Order> FindAsync() => (await _shop.Get<OrderDesk>().FindAsync(StaffShop.New))!;

    private static IRenderedComponent<OrderPage> Open(BunitContext browser)
    {
        var page = browser.Render<OrderPage>(parameters => parameters.Add(order => order.Number, StaffShop.New));
        page.WaitForState(() => page.FindAll("#next-title").Count == 1, Patience);
        return page;
    }
}
