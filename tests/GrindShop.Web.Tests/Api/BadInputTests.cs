using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using Xunit;

namespace GrindShop.Web.Tests.Api;

/// <summary>Wrong, missing, huge and hostile input by the API: always a 400 that names the field, never a 500, never half a save.</summary>
public sealed class BadInputTests(ShopApp app) : IClassFixture<ShopApp>
{
    private readonly HttpClient _client = app.CreateClient();

    private static readonly Dictionary<string, string> Good = new()
    {
        ["calc/lobe"] = $$"""{"lobe":{{ApiClient.Lobe}},"follower":{{ApiClient.Roller}},"baseCircleDiameterIn":1.1,"wheelRadiusIn":9,"durationsAtIn":[0.05],"stepCamDeg":30}""",
        ["calc/stock"] = $$"""
            {"blank":{"form":"milled","lobe":{{ApiClient.Lobe}},"follower":{{ApiClient.Roller}},"baseCircleDiameterIn":1.1,"stockIn":0.03},
             "finish":{"lobe":{{ApiClient.Lobe}},"follower":{{ApiClient.Roller}}},"turnCamDeg":0.5,"cleanupIn":0.005,"caseDepthIn":0.2,"leastCaseIn":0.1}
            """,
        ["calc/timing"] = """{"intakeDurationCrankDeg":260,"exhaustDurationCrankDeg":260,"lobeSeparationCamDeg":110,"intakeCenterlineCrankDeg":105}""",
        ["calc/contact"] = """{"forceLbf":500,"widthIn":0.5,"radius1In":0.375,"radius2In":0.8,"modulus1Psi":3e7,"modulus2Psi":3e7,"poisson1":0.29,"poisson2":0.29}""",
        ["feasibility"] = FeasibilityTests.Request(),
    };

    private static readonly string[] Wrongs =
        ["-1", "1e308", "1e999", "\"222\"", "\"25 mm\"", "true", "[]", "{}", "\"<script>alert(1)</script>\"", "-0.0001e-300", "{\"a\":{\"b\":[1]}}", "\"\\ud800\"", "\"\\u0000\""];

    public static TheoryData<string> Paths => [.. Good.Keys];

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Every_field_put_wrong_is_named(string path)
    {
        foreach (var field in Leaves(JsonNode.Parse(Good[path])!.AsObject(), ""))
            foreach (var wrong in new[] { "1e308", "\"25 mm\"", "{}" })
            {
                var errors = await _client.PostBadAsync(path, Put(path, field, wrong));
                Assert.Contains(errors.Keys, key => key == field || field.StartsWith(key, StringComparison.Ordinal));
            }
    }

    [Fact]
    public async Task Whatever_is_put_anywhere_the_answer_is_200_or_400()
    {
        var places = Good.Keys.SelectMany(path => Leaves(JsonNode.Parse(Good[path])!.AsObject(), "").Select(field => (path, field))).ToArray();
        await Gen.Select(Gen.Int[0, places.Length - 1].Select(i => places[i]), Gen.Int[0, Wrongs.Length - 1].Select(i => Wrongs[i])).SampleAsync(
            async (place, wrong) =>
            {
                using var response = await _client.PostRawAsync(place.path, Put(place.path, place.field, wrong));
                return response.StatusCode is HttpStatusCode.OK or HttpStatusCode.BadRequest;
            },
            iter: 300, threads: 2);
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("7")]
    [InlineData("{\"lobe\":NaN}")]
    [InlineData("{\"lobe\":")]
    public async Task A_body_that_is_no_object_is_a_400(string body)
    {
        Assert.Contains("body", (await _client.PostBadAsync("calc/lobe", body)).Keys);
    }

    [Theory]
    [InlineData("calc/lobe", "{\"follower\":{\"kind\":\"\\ud800\"}}", "follower.kind")]
    [InlineData("feasibility", "{\"engineFamily\":\"\\ud800\"}", "engineFamily")]
    public async Task Half_a_character_is_named(string path, string body, string field) => Assert.Contains(field, (await _client.PostBadAsync(path, body)).Keys);

    [Fact]
    public async Task Bytes_that_are_no_text_are_a_400()
    {
        byte[] body = [.. "{\"engineFamily\":\""u8, 0xff, 0xfe, .. "\"}"u8];
        using var content = new ByteArrayContent(body) { Headers = { ContentType = new("application/json") } };
        using var response = await _client.PostAsync("/api/v1/feasibility", content);
        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
    }

    [Fact]
    public async Task More_masters_than_can_be_answered_at_once_are_refused()
    {
        var settings = string.Join(',', Enumerable.Repeat("""{"baseCircleDiameterIn":1.0,"wheelRadiusIn":9}""", 25));
        var errors = await _client.PostBadAsync("calc/master", $$"""{"lobe":{{ApiClient.Lobe}},"follower":{{ApiClient.Roller}},"madeAt":{"baseCircleDiameterIn":1.1,"wheelRadiusIn":9},"groundAt":[{{settings}}],"durationsAtIn":[0.006,0.02,0.05,0.1,0.2]}""");
        Assert.Contains("groundAt", errors.Keys);
    }

    [Fact]
    public async Task Deep_nesting_is_a_400() =>
        Assert.NotEmpty(await _client.PostBadAsync("calc/lobe", string.Concat(Enumerable.Repeat("{\"lobe\":", 500)) + "1" + new string('}', 500)));

    [Fact]
    public async Task Hundred_kilobytes_of_text_name_the_field_and_save_nothing()
    {
        var before = await FeasibilityTests.CountOrdersAsync(app);
        var enquiry = JsonNode.Parse(FeasibilityTests.Request())!.AsObject();
        enquiry["contact"] = JsonNode.Parse("""{"name":"Ada Brook","email":"ada@example.org"}""");
        enquiry["notes"] = new string('x', 100_000);
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/v1/enquiries") { Content = new StringContent(enquiry.ToJsonString(), Encoding.UTF8, "application/json") };
        request.Headers.Add("Idempotency-Key", Guid.NewGuid().ToString());

        using var response = await _client.SendAsync(request);

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        Assert.Contains("\"notes\"", await response.Content.ReadAsStringAsync());
        Assert.Equal(before, await FeasibilityTests.CountOrdersAsync(app));
    }

    [Fact]
    public async Task A_body_over_the_limit_is_refused()
    {
        using var response = await _client.PostRawAsync("calc/lobe", $"{{\"pad\":\"{new string('x', 2_000_000)}\"}}");
        Assert.True(response.StatusCode is HttpStatusCode.RequestEntityTooLarge or HttpStatusCode.BadRequest, response.StatusCode.ToString());
    }

    [Fact]
    public async Task Another_content_type_is_a_415()
    {
        using var response = await _client.PostAsync("/api/v1/calc/lobe", new StringContent("a=1", Encoding.UTF8, "application/x-www-form-urlencoded"));
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, response.StatusCode);
    }

    [Fact]
    public async Task Advertised_out_of_the_laws_reach_names_the_range()
    {
        const string lobe = """{"lobeLiftIn":0.335,"durationAt050CrankDeg":222,"advertisedDurationCrankDeg":224,"advertisedAtIn":0.006}""";
        var errors = await _client.PostBadAsync("calc/lobe", $$"""{"lobe":{{lobe}},"follower":{{ApiClient.Roller}},"baseCircleDiameterIn":1.1}""");
        Assert.Matches(@"\d", Assert.Single(errors["lobe.advertisedDurationCrankDeg"]));
    }

    private static string Put(string path, string field, string wrong)
    {
        var root = JsonNode.Parse(Good[path])!;
        var steps = field.Split('.');
        var owner = steps[..^1].Aggregate(root, (node, step) => node[step]!).AsObject();
        owner[steps[^1]] = "@";
        return root.ToJsonString().Replace("\"@\"", wrong, StringComparison.Ordinal);
    }

    private static IEnumerable<string> Leaves(JsonObject node, string path) => node.SelectMany(property => property.Value is JsonObject inner
        ? Leaves(inner, $"{path}{property.Key}.")
        : [$"{path}{property.Key}"]);
}
