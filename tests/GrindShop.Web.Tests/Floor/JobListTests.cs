using Bunit;
using GrindShop.Web.Floor;
using GrindShop.Web.Security;
using GrindShop.Web.Tests.Desk;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Web.Tests.Floor;

public sealed class JobListTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Theory]
    [InlineData(" j1002 ")]
    [InlineData("http://shop.example/floor/jobs/J1002")]
    public async Task A_scanned_code_opens_its_job(string scanned)
    {
        await using var browser = shop.Browser("Rolf Anstey", Policies.Floor);
        var page = browser.Render<JobList>();
        await ScanAsync(page, scanned);
        var address = browser.Services.GetRequiredService<NavigationManager>();
        page.WaitForState(() => address.Uri.EndsWith("/floor/jobs/J1002", StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task An_unknown_code_is_said_and_stays_in_the_field()
    {
        await using var browser = shop.Browser("Rolf Anstey", Policies.Floor);
        var page = browser.Render<JobList>();
        await ScanAsync(page, "J9999");
        page.WaitForState(() => page.FindAll("#scan-problem").Count == 1, Patience);
        Assert.Contains("no job J9999", page.Find("#scan-problem").TextContent);
        Assert.Equal("J9999", page.Find("#scan").GetAttribute("value"));
    }

    [Fact]
    public async Task Open_jobs_stand_with_their_next_step_and_blank()
    {
        await using var browser = shop.Browser("Rolf Anstey", Policies.Floor);
        var page = browser.Render<JobList>();
        page.WaitForState(() => page.FindAll("#jobs a").Count == 1, Patience);
        var job = page.Find("#jobs a").TextContent;
        Assert.Contains(StaffShop.Job, job);
        Assert.Contains("Grind", job);
        Assert.Contains("RV8R-HI-03", job);
    }

    private static async Task ScanAsync(IRenderedComponent<JobList> page, string text)
    {
        await page.InvokeAsync(() => page.Find("#scan").ChangeAsync(text));
        await page.InvokeAsync(() => page.Find("form.scan").SubmitAsync());
    }
}
