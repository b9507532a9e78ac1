using Bunit;
using GrindShop.Shop.Routing;
using GrindShop.Web.Floor;
using GrindShop.Web.Security;
using GrindShop.Web.Tests.Desk;

namespace GrindShop.Web.Tests.Floor;

public sealed class JobPageTests(StaffShop shop) : IClassFixture<StaffShop>
{
    [Fact]
    public async Task A_double_tap_gives_one_line_of_history_and_does_not_press_the_next_step()
    {
        await using var browser = shop.Browser("Rolf Anstey", Policies.Floor);
        var page = Open(browser, StaffShop.Job);
        var before = await JobAsync();
        var button = page.Find("#done");
        var taps = new[] { button.ClickAsync(), button.ClickAsync() };
        await Task.WhenAll(taps);

        page.WaitForState(() => page.FindAll("#result").Count == 1);
        var after = await JobAsync();
        Assert.Equal(before.History.Count + 1, after.History.Count);
        Assert.Equal(before.StepsDone + 1, after.StepsDone);
        Assert.Contains("Rolf Anstey", page.Find("#result").TextContent);
    }

    [Fact]
    public async Task An_unknown_code_is_said_and_the_field_stays()
    {
        await using var browser = shop.Browser("Rolf Anstey", Policies.Floor);
        var page = Open(browser, "J9999");
        Assert.Contains("no job J9999", page.Find("#unknown").TextContent);
        Assert.NotNull(page.Find("#scan"));
    }

    private Task<Job> JobAsync() => shop.Get<JobFloor>().FindAsync(StaffShop.Job)!;

    private static IRenderedComponent<JobPage> Open(BunitContext browser, string code)
    {
        var page = browser.Render<JobPage>(parameters => parameters.Add(job => job.Code, code));
        page.WaitForState(() => page.FindAll("#done, #unknown").Count > 0, TimeSpan.FromSeconds(30));
        return page;
    }
}
