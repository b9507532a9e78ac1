using Bunit;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Web.Desk;
using GrindShop.Web.Public;
using GrindShop.Web.Security;
using GrindShop.Web.Tests.Desk;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Web.Tests.Settings;

/// <summary>An edited reason is what the open form and the desk read out.</summary>
public sealed class RuleEffectTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private const string Edited = "Edited: this pair went through three engines without wear.";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task The_open_form_shows_the_edited_reason_by_itself_and_keeps_what_was_typed()
    {
        await using var browser = shop.Browser("nobody");
        browser.Renderer.SetRendererInfo(new RendererInfo("Server", isInteractive: true));
        var listener = browser.Services.GetRequiredService<ChangeListener>();
        await listener.StartAsync(default);
        await shop.IsListeningAsync();
        var page = await DescribedAsync(browser);

        await EditAllGearsAsync($"{Edited} Form.");

        page.WaitForState(() => page.Find(".blank-card .gear").TextContent.Contains($"{Edited} Form.", StringComparison.Ordinal), Patience);
        Assert.Equal(".335", page.Find("#intake-lobe-lift").GetAttribute("value"));
        await listener.StopAsync(default);
    }

    [Fact]
    public async Task The_desk_sees_it_when_it_judges_again_and_until_then_the_answer_of_the_day()
    {
        await EditAllGearsAsync($"{Edited} Desk.");
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = browser.Render<OrderPage>(parameters => parameters.Add(order => order.Number, StaffShop.New));
        page.WaitForState(() => page.FindAll("#blanks").Count == 1, Patience);
        Assert.DoesNotContain($"{Edited} Desk.", page.Find("#blanks").TextContent);

        var desk = shop.Get<OrderDesk>();
        var order = (await desk.FindAsync(StaffShop.New))!;
        var named = order.First.Spec with { DistributorGear = Shop.Engines.DistributorGear.Iron };
        Assert.True((await desk.CorrectAsync(order.Number, order.Version, named, "gear named", "Piers Oakham")).Succeeded);
        var again = browser.Render<OrderPage>(parameters => parameters.Add(open => open.Number, StaffShop.New));

        again.WaitForState(() => again.FindAll("#blanks").Count == 1, Patience);
        Assert.Contains($"{Edited} Desk.", again.Find("#blanks").TextContent);
    }

    private async Task EditAllGearsAsync(string reason)
    {
        var book = shop.Get<RuleBook>();
        foreach (var rule in (await book.AllAsync()).OfType<GearRule>())
            Assert.True((await book.ChangeAsync(new RuleEdit(rule.Key, rule.Version, RuleVerdict.Caution, reason, "test"), "Owner")).Succeeded);
    }

    private static async Task<IRenderedComponent<SpecForm>> DescribedAsync(BunitContext browser)
    {
        var page = browser.Render<SpecForm>();
        page.WaitForState(() => page.FindAll("form.asked > fieldset:not([disabled]) #engine-family option").Count > 1, Patience);
        await page.InvokeAsync(() => page.Find("#engine-family").ChangeAsync("RV8-R"));
        await page.InvokeAsync(() => page.Find("#lifter").ChangeAsync("HydraulicRoller"));
        await page.InvokeAsync(() => page.Find("#distributor-gear").ChangeAsync("Bronze"));
        await page.InvokeAsync(() => page.Find("#intake-duration-050").InputAsync("222"));
        await page.InvokeAsync(() => page.Find("#intake-lobe-lift").InputAsync(".335"));
        page.WaitForState(() => page.FindAll(".blank-card").Count == 1, Patience);
        return page;
    }
}
