using System.Text.Json;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
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
        foreach (var step in job.Steps.OrderBy(step => step.Ordinal))
            Assert.True((await app.Services.GetRequiredService<JobFloor>().CompleteAsync(job.Code, step.Stage, "Floor", $"key-{step.Stage}")).Succeeded);
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
        order = (await Desk.AddCamAsync(order.Number, order.Version, gear, "Desk")).Value!;
        var parts = new Dictionary<int, string> { [1] = order.First.Answer!.Best!.PartNumber };
        var lines = (await Desk.DraftAsync(order, new Dictionary<int, CamChoice> { [1] = new(parts[1], []) })).Value!;
        var today = DateOnly.FromDateTime(DateTime.UtcNow);
        order = (await Desk.QuoteAsync(order.Number, order.Version, new QuoteOffer { Parts = parts, Lines = lines, ValidUntil = today.AddDays(30) }, "Desk")).Value!;
        return (await Desk.AcceptAsync(order.Number, order.Version, today.AddDays(30), "Desk")).Value!;
    }
}
