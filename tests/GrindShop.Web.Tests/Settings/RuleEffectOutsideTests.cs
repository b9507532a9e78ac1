using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Web.Tests.Api;
using Microsoft.Extensions.DependencyInjection;
using UglyToad.PdfPig;

namespace GrindShop.Web.Tests.Settings;

/// <summary>An edited reason is what programs are answered and what is printed.</summary>
public sealed class RuleEffectOutsideTests(ShopApp app) : IClassFixture<ShopApp>
{
    private const string Gear = "Edited: mind the first hundred miles.", Pump = "Edited: composite tip, always.";

    [Fact]
    public async Task Programs_and_papers_get_the_edited_words()
    {
        var client = app.CreateClient();
        await EditAsync<GearRule>(Gear);
        await EditAsync<PumpRule>(Pump);
        var request = FeasibilityTests.Request().TrimEnd()[..^1] + ",\"mechanicalFuelPump\":true}";

        var best = (await client.PostOkAsync("feasibility", request)).GetProperty("blanks")[0];

        Assert.Equal(("caution", Gear), (best.GetProperty("gear").GetProperty("verdict").GetString(), best.GetProperty("gear").GetProperty("reason").GetString()));
        Assert.Equal([Pump], best.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("reason").GetString()));
        var printed = await PrintedAsync(best.GetProperty("partNumber").GetString()!);
        Assert.Contains(Gear, printed, StringComparison.Ordinal);
        Assert.Contains(Pump, printed, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_pump_on_an_engine_that_drives_none_is_named()
    {
        var errors = await app.CreateClient().PostBadAsync("feasibility",
            FeasibilityTests.Request().Replace("RV8-R", "NV8-C", StringComparison.Ordinal).Replace("\"distributorGear\":\"iron\"", "\"mechanicalFuelPump\":true", StringComparison.Ordinal));

        Assert.Contains("mechanicalFuelPump", errors.Keys);
    }

    private async Task EditAsync<TRule>(string reason)
        where TRule : CompatibilityRule
    {
        var book = app.Services.GetRequiredService<RuleBook>();
        foreach (var rule in (await book.AllAsync()).OfType<TRule>())
            Assert.True((await book.ChangeAsync(new RuleEdit(rule.Key, rule.Version, RuleVerdict.Caution, reason, "test"), "Owner")).Succeeded);
    }

    /// <summary>The traveler of an order taken in, priced, accepted and put to work after the edit.</summary>
    private async Task<string> PrintedAsync(string part)
    {
        var (intake, desk, floor) = (app.Services.GetRequiredService<SpecIntake>(), app.Services.GetRequiredService<OrderDesk>(), app.Services.GetRequiredService<Allocation>());
        var order = (await intake.SubmitAsync(Some.Enquiry, "customer")).Order!;
        order = (await desk.QuoteAsync(order.Number, order.Version, part, [new PriceLine("base", "Grinding", 300)], "Desk")).Value!;
        order = (await desk.AcceptAsync(order.Number, order.Version, DateOnly.FromDateTime(DateTime.UtcNow.AddDays(40)), "Desk")).Value!;
        var job = (await floor.StartAsync(order.Number, order.Version, part, "Desk")).Value!;
        using var document = PdfDocument.Open(GrindShop.Papers.TravelerPaper.Print(await Some.TravelerAsync(app, job.Code)));
        return string.Join(' ', document.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text));
    }
}
