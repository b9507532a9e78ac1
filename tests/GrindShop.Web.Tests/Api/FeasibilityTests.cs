using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace GrindShop.Web.Tests.Api;

public sealed class FeasibilityTests(ShopApp app) : IClassFixture<ShopApp>
{
    private readonly HttpClient _client = app.CreateClient();

    internal static string Request(double lsa = 112, double lift = .335, double at050 = 222, string gear = "iron", string? order = null, string lifter = "hydraulicRoller") =>
        FormattableString.Invariant($$$"""
            {"engineFamily":"RV8-R","lifter":"{{{lifter}}}","follower":{{{ApiClient.Roller}}},
             "intake":{"lobe":{"lobeLiftIn":{{{lift}}},"durationAt050CrankDeg":{{{at050}}},"advertisedDurationCrankDeg":{{{at050 + 50}}},"advertisedAtIn":0.006}},
             "exhaust":{"lobe":{"lobeLiftIn":{{{lift}}},"durationAt050CrankDeg":{{{at050 + 8}}},"advertisedDurationCrankDeg":{{{at050 + 58}}},"advertisedAtIn":0.006}},
             "lobeSeparationCamDeg":{{{lsa}}},"intakeCenterlineCrankDeg":{{{lsa - 4}}},"distributorGear":"{{{gear}}}"{{{(order is null ? "" : $",\"firingOrder\":\"{order}\"")}}}}
            """);

    internal static async Task<int> CountOrdersAsync(ShopApp app)
    {
        await using var db = await app.Services.GetRequiredService<IDbContextFactory<ShopDb>>().CreateDbContextAsync();
        return await db.Orders.CountAsync();
    }

    [Fact]
    public async Task Engines_and_blanks_tell_public_facts_only()
    {
        var engines = JsonDocument.Parse(await _client.GetStringAsync("/api/v1/engines")).RootElement;
        var text = await _client.GetStringAsync("/api/v1/blanks");
        var blanks = JsonDocument.Parse(text).RootElement;

        Assert.True(engines.GetArrayLength() >= 8);
        Assert.True(blanks.GetArrayLength() >= 60);
        Assert.All(engines.EnumerateArray(), engine => Assert.NotEmpty(engine.GetProperty("code").GetString()!));
        foreach (var secret in new[] { "cost", "supplier", "quantity", "available", "onHand", "location", "lot" })
            Assert.DoesNotContain($"\"{secret}", text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task An_everyday_cam_comes_from_stock_with_the_best_blank_first()
    {
        var answer = await _client.PostOkAsync("feasibility", Request());

        Assert.Equal("fromStock", answer.GetProperty("verdict").GetString());
        var best = answer.GetProperty("blanks")[0];
        Assert.True(best.GetProperty("fits").GetBoolean() && best.GetProperty("inStock").GetBoolean());
        Assert.NotEqual("no", best.GetProperty("gear").GetProperty("verdict").GetString());
        Assert.NotEmpty(best.GetProperty("reasons").EnumerateArray());
    }

    [Fact]
    public async Task A_blanks_base_circle_is_that_of_the_stock_calculation()
    {
        var answer = await _client.PostOkAsync("feasibility", Request());
        var blanks = JsonDocument.Parse(await _client.GetStringAsync("/api/v1/blanks")).RootElement.EnumerateArray();
        var best = answer.GetProperty("blanks").EnumerateArray().First(fit => fit.GetProperty("partNumber").GetString()!.Contains("AD", StringComparison.Ordinal));
        var nominal = blanks.Single(blank => blank.GetProperty("partNumber").GetString() == best.GetProperty("partNumber").GetString()).GetProperty("nominal");
        var turn = (108 - nominal.Number("intakeCenterlineCrankDeg")) / 2;

        var stock = await _client.PostOkAsync("calc/stock", FormattableString.Invariant($$"""
            {"blank":{"form":"milled","lobe":{{nominal.GetProperty("intake").GetRawText()}},"follower":{{ApiClient.Roller}},"baseCircleDiameterIn":{{nominal.Number("baseCircleDiameterIn")}},"stockIn":{{nominal.Number("stockIn")}}},
             "finish":{"lobe":{{ApiClient.Lobe}},"follower":{{ApiClient.Roller}}},"turnCamDeg":{{turn}},"cleanupIn":0.004}
            """));

        Assert.Equal(stock.Number("maxBaseCircleDiameterIn"), best.Number("intakeBaseCircleDiameterIn"), 3e-4);
    }

    // Common practice, no source: a milled blank cannot become a cam some 25 degrees longer at .050, nor one whose lobes stand far apart from its own.
    [Fact]
    public async Task What_no_blank_has_metal_for_is_not_grindable_and_says_why()
    {
        var answer = await _client.PostOkAsync("feasibility", Request(lsa: 128, lift: .6));

        Assert.Equal("notGrindable", answer.GetProperty("verdict").GetString());
        Assert.All(answer.GetProperty("blanks").EnumerateArray(), blank => Assert.NotEmpty(blank.GetProperty("reasons").EnumerateArray()));
    }

    // Common practice, no source: a changed firing order needs a blank milled for it, or a full-round one.
    [Fact]
    public async Task A_changed_firing_order_leaves_only_blanks_made_for_it_and_full_round_ones()
    {
        var answer = await _client.PostOkAsync("feasibility", Request(order: "1-8-7-3-6-5-4-2"));
        var blanks = JsonDocument.Parse(await _client.GetStringAsync("/api/v1/blanks")).RootElement.EnumerateArray().ToDictionary(blank => blank.GetProperty("partNumber").GetString()!);

        var fitting = answer.GetProperty("blanks").EnumerateArray().Where(fit => fit.GetProperty("fits").GetBoolean()).Select(fit => blanks[fit.GetProperty("partNumber").GetString()!]).ToList();

        Assert.NotEmpty(fitting);
        Assert.All(fitting, blank => Assert.True(blank.GetProperty("form").GetString() == "fullRound" || blank.GetProperty("firingOrder").GetString() == "1-8-7-3-6-5-4-2"));
    }

    // Common practice, no source: an iron distributor gear fails against a gear cut in one piece with a steel cam.
    [Fact]
    public async Task Steel_in_one_piece_is_no_with_an_iron_distributor_gear_and_ok_with_bronze()
    {
        var blanks = JsonDocument.Parse(await _client.GetStringAsync("/api/v1/blanks")).RootElement.EnumerateArray()
            .Where(blank => blank.GetProperty("camGear").GetString() == "steel").Select(blank => blank.GetProperty("partNumber").GetString()!).ToHashSet();
        var iron = await _client.PostOkAsync("feasibility", Request());
        var bronze = await _client.PostOkAsync("feasibility", Request(gear: "bronze"));

        Assert.All(Of(iron), fit => Assert.Equal("no", fit.GetProperty("gear").GetProperty("verdict").GetString()));
        Assert.All(Of(bronze), fit => Assert.Equal("ok", fit.GetProperty("gear").GetProperty("verdict").GetString()));

        IEnumerable<JsonElement> Of(JsonElement answer) => answer.GetProperty("blanks").EnumerateArray().Where(fit => blanks.Contains(fit.GetProperty("partNumber").GetString()!));
    }

    [Theory]
    [InlineData("engineFamily", "\"NOPE\"", "engineFamily")]
    [InlineData("lifter", "\"solidFlat\"", "follower.kind")]
    [InlineData("lobeSeparationCamDeg", "20", "lobeSeparationCamDeg")]
    [InlineData("intakeCenterlineCrankDeg", "-4", "intakeCenterlineCrankDeg")]
    [InlineData("firingOrder", "\"1-1-2-3\"", "firingOrder")]
    [InlineData("distributorGear", "\"wood\"", "distributorGear")]
    [InlineData("exhaust", "null", "exhaust.lobe")]
    [InlineData("follower", "null", "follower")]
    public async Task A_wrong_field_is_named(string field, string wrong, string named)
    {
        var request = JsonNode.Parse(Request())!.AsObject();
        request[field] = JsonNode.Parse(wrong);
        Assert.Contains(named, (await _client.PostBadAsync("feasibility", request.ToJsonString())).Keys);
    }

    [Fact]
    public async Task Advertised_below_the_duration_at_050_is_named()
    {
        var request = JsonNode.Parse(Request())!.AsObject();
        request["intake"]!["lobe"]!["advertisedDurationCrankDeg"] = 210;
        Assert.Contains("intake.lobe.advertisedDurationCrankDeg", (await _client.PostBadAsync("feasibility", request.ToJsonString())).Keys);
    }

    [Fact]
    public async Task An_enquiry_sent_twice_is_one_order()
    {
        var before = await CountOrdersAsync(app);
        var key = Guid.NewGuid().ToString();
        var answers = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => SendAsync(key, Enquiry())));
        var codes = new List<string?>();
        foreach (var answer in answers)
        {
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            codes.Add(JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement.GetProperty("trackingCode").GetString());
        }

        Assert.Single(codes.Distinct());
        Assert.Equal(before + 1, await CountOrdersAsync(app));
        var track = JsonDocument.Parse(await _client.GetStringAsync($"/api/v1/track/{codes[0]}")).RootElement;
        Assert.Equal("new", track.GetProperty("state").GetString());
        using var other = await SendAsync(key, Enquiry("Someone else"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, other.StatusCode);
    }

    [Fact]
    public async Task An_enquiry_without_a_key_or_a_contact_is_refused()
    {
        using var noKey = await SendAsync(null, Enquiry());
        using var noContact = await SendAsync(Guid.NewGuid().ToString(), Request());

        Assert.Contains("Idempotency-Key", await noKey.Content.ReadAsStringAsync());
        Assert.Contains("contact", await noContact.Content.ReadAsStringAsync());
        Assert.All(new[] { noKey, noContact }, response => Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode));
    }

    [Fact]
    public async Task An_unknown_tracking_code_is_a_404()
    {
        using var response = await _client.GetAsync("/api/v1/track/NOSUCHCODE0000");
        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
    }

    private static string Enquiry(string name = "Ada Brook")
    {
        var enquiry = JsonNode.Parse(Request())!.AsObject();
        enquiry["contact"] = new JsonObject { ["name"] = name, ["email"] = "ada.brook@example.org" };
        return enquiry.ToJsonString();
    }

    private Task<HttpResponseMessage> SendAsync(string? key, string json)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, "/api/v1/enquiries") { Content = new StringContent(json, Encoding.UTF8, "application/json") };
        if (key is not null)
            request.Headers.Add("Idempotency-Key", key);
        return _client.SendAsync(request);
    }
}
