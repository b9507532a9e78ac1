using System.Text.Json;
using Bunit;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Web.Public;
using GrindShop.Web.Tests.Settings;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Web.Tests.Api;

/// <summary>What a customer's program reads of an order of several cams.</summary>
public sealed class TrackTests(ShopApp app) : IClassFixture<ShopApp>
{
    private OrderDesk Desk => app.Services.GetRequiredService<OrderDesk>();

    [Fact]
    public async Task Every_cam_has_its_jobs_with_their_stages_and_the_card_once_it_has_shipped()
    {
        var order = await TwoCamsAsync();
        var job = (await app.Services.GetRequiredService<Allocation>().StartAsync(order.Number, order.Version, null, "Desk", cam: 2, condition: "Teeth gone.")).Value!;
        await ShipAsync(job);
        using var client = app.CreateClient();

        var track = JsonDocument.Parse(await client.GetStringAsync($"/api/v1/track/{order.TrackingCode}")).RootElement;

        var cams = track.GetProperty("cams").EnumerateArray().ToList();
        Assert.Equal(["newGrind", "gearReplacement"], cams.Select(cam => cam.GetProperty("kind").GetString()));
        Assert.Equal([0, 1], cams.Select(cam => cam.GetProperty("shipped").GetInt32()));
        Assert.Empty(cams[0].GetProperty("jobs").EnumerateArray());
        var repaired = Assert.Single(cams[1].GetProperty("jobs").EnumerateArray());
        Assert.Equal(["receive", "press gear", "inspect", "ship"], repaired.GetProperty("stages").EnumerateArray().Select(stage => stage.GetProperty("stage").GetString()));
        foreach (var paper in new[] { repaired.GetProperty("specCard").GetString(), track.GetProperty("quote").GetString() })
            Assert.Equal("application/pdf", (await client.GetAsync(paper)).Content.Headers.ContentType?.MediaType);
        Assert.Equal(4, track.GetProperty("stages").GetArrayLength());
    }

    [Fact]
    public async Task A_cam_that_is_only_drawn_up_is_not_told()
    {
        var order = await TwoCamsAsync();
        order = (await Desk.AddCamAsync(order.Number, order.Version, order.First.Entry, "Desk")).Value!;
        Assert.Equal(3, order.Cams.Count);
        using var client = app.CreateClient();
        var track = JsonDocument.Parse(await client.GetStringAsync($"/api/v1/track/{order.TrackingCode}")).RootElement;
        Assert.Equal([1, 2], track.GetProperty("cams").EnumerateArray().Select(cam => cam.GetProperty("cam").GetInt32()));
    }

    [Fact]
    public async Task Every_piece_that_has_shipped_has_its_card_in_the_mail_and_on_the_customers_page()
    {
        var order = await AcceptAsync((await app.Services.GetRequiredService<SpecIntake>().SubmitAsync(Some.Enquiry with { Quantity = 2, Contact = new Contact { Name = "Aldo Brenninck", Email = "aldo@example.com" } }, "Desk")).Order!);
        for (var piece = 0; piece < 2; piece++)
        {
            var now = (await Desk.FindAsync(order.Number))!;
            await ShipAsync((await app.Services.GetRequiredService<Allocation>().StartAsync(now.Number, now.Version, now.First.QuotedPartNumber, "Desk")).Value!);
        }
        var jobs = await app.Services.GetRequiredService<JobFloor>().JobsOfAsync(order.Number);
        Assert.Equal(2, jobs.Count);

        var papers = await app.Services.GetRequiredService<PrintPapers>()("spec-card", order.Number, default);
        await using var browser = new BunitContext();
        var settings = (await app.Services.GetRequiredService<Catalog>().ContentAsync()).Rules.Settings;
        order = (await Desk.FindAsync(order.Number))!;
        var page = browser.Render<TrackedOrder>(parts => parts.Add(one => one.Order, order).Add(one => one.Jobs, jobs).Add(one => one.Settings, settings));

        Assert.Equal(jobs.Select(job => $"spec-card-{job.Code}.pdf"), papers.Select(paper => paper.FileName));
        Assert.Equal(jobs.Select(job => $"/papers/spec-card/{order.TrackingCode}/{job.Code}.pdf"), page.FindAll("a.go").Select(link => link.GetAttribute("href")));
        Assert.All(jobs, job => Assert.Contains($"Spec card of job {job.Code} (PDF)", page.Markup, StringComparison.Ordinal));
        Assert.Contains("Their spec cards are attached", (await app.Services.GetRequiredService<Outbox>().OfOrderAsync(order.Number)).Select(mail => mail.Text).Single(text => text.Contains("have left the shop", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    private async Task ShipAsync(Job job)
    {
        foreach (var step in job.Steps.OrderBy(step => step.Ordinal))
            Assert.True((await app.Services.GetRequiredService<JobFloor>().CompleteAsync(job.Code, step.Stage, "Floor", $"key-{step.Stage}")).Succeeded);
    }

    private async Task<Order> TwoCamsAsync()
    {
        var order = (await app.Services.GetRequiredService<SpecIntake>().SubmitAsync(Some.Enquiry, "Desk")).Order!;
        var gear = new CamEntry
        {
            Kind = WorkKind.GearReplacement,
            Spec = order.First.Spec,
            ReceivedCondition = "Teeth worn.",
            IsExpected = true,
            Gear = new GearSwap { Marks = "M-14", Old = CamGear.PressedIron, New = CamGear.PressedIron },
        };
        return await AcceptAsync((await Desk.AddCamAsync(order.Number, order.Version, gear, "Desk")).Value!);
    }

    private async Task<Order> AcceptAsync(Order order)
    {
        var parts = new Dictionary<int, string> { [1] = order.First.Answer!.Best!.PartNumber };
        var lines = (await Desk.DraftAsync(order, new Dictionary<int, CamChoice> { [1] = new(parts[1], []) })).Value!.Lines;
        var today = DateOnly.FromDateTime(DateTime.UtcNow);
        order = (await Desk.QuoteAsync(order.Number, order.Version, new QuoteOffer { Parts = parts, Lines = lines, ValidUntil = today.AddDays(30) }, "Desk")).Value!;
        return (await Desk.AcceptAsync(order.Number, order.Version, today.AddDays(30), "Desk")).Value!;
    }
}
