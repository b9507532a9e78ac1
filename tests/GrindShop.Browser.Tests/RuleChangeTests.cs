using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>The owner changes a cell of the gear table while a customer's form is open.</summary>
public sealed class RuleChangeTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task The_customers_form_reads_out_the_new_reason_without_a_reload()
    {
        const string said = "Three of these went a season without wear: look at it once a year.";
        var customer = await browser.VisitAsync();
        await customer.OpenAsync("/spec");
        await customer.SelectOptionAsync("#engine-family", "RV8-R");
        await customer.SelectOptionAsync("#lifter", "HydraulicRoller");
        await customer.SelectOptionAsync("#distributor-gear", "Iron");
        await customer.FillAsync("#intake-lobe-lift", ".335");
        await customer.FillAsync("#intake-duration-050", "222");
        await Expect(customer.Locator(".blank-card .gear")).ToContainTextAsync("wear alike");
        var owner = await browser.VisitAsync(Person.Owner);
        await owner.OpenAsync("/settings/rules");

        foreach (var gear in new[] { "austemperedDuctileIron", "pressedIron" })
        {
            await owner.ClickAsync($"a[href='/settings/rules/gear/rear/{gear}/iron']");
            await owner.FillAsync("#reason", said);
            await owner.FillAsync("#why", "a season of returns");
            await owner.ClickAsync("#save");
            await Expect(owner.Locator("#said")).ToContainTextAsync("Saved");
            await owner.ClickAsync("text=Back to all rules");
        }

        await Expect(customer.Locator(".blank-card .gear")).ToContainTextAsync(said);
        await Expect(customer.Locator("#intake-lobe-lift")).ToHaveValueAsync(".335");
    }
}
