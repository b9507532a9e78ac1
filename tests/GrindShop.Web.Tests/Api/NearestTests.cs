using System.Text.Json;
using System.Text.Json.Nodes;
using Xunit;

namespace GrindShop.Web.Tests.Api;

public sealed class NearestTests(ShopApp app) : IClassFixture<ShopApp>
{
    private readonly HttpClient _client = app.CreateClient();

    [Fact]
    public async Task Nothing_is_offered_beside_what_comes_from_stock() =>
        Assert.Empty((await _client.PostOkAsync("feasibility", FeasibilityTests.Request())).GetProperty("nearest").EnumerateArray());

    [Fact]
    public async Task Offers_say_what_is_given_up_and_each_can_be_ground_when_asked_for()
    {
        var wish = FeasibilityTests.Request(lift: .5);
        var answer = await _client.PostOkAsync("feasibility", wish);
        var offers = answer.GetProperty("nearest").EnumerateArray().ToList();

        Assert.Equal("notGrindable", answer.GetProperty("verdict").GetString());
        Assert.InRange(offers.Count, 1, 3);
        foreach (var offer in offers)
        {
            Assert.NotEmpty(offer.GetProperty("givenUp").EnumerateArray());
            var again = await _client.PostOkAsync("feasibility", Taken(wish, offer));
            var blank = again.GetProperty("blanks").EnumerateArray().Single(fit => fit.GetProperty("partNumber").GetString() == offer.GetProperty("partNumber").GetString());
            Assert.True(blank.GetProperty("fits").GetBoolean());
            Assert.NotEqual("no", blank.GetProperty("gear").GetProperty("verdict").GetString());
            Assert.Equal(offer.Number("intakeBaseCircleDiameterIn"), blank.Number("intakeBaseCircleDiameterIn"), 1e-9);
            Assert.NotEqual("notGrindable", again.GetProperty("verdict").GetString());
        }
    }

    private static string Taken(string wish, JsonElement offer)
    {
        var request = JsonNode.Parse(wish)!.AsObject();
        foreach (var field in new[] { "intake", "exhaust", "lobeSeparationCamDeg", "intakeCenterlineCrankDeg", "distributorGear" })
            request[field] = JsonNode.Parse(offer.GetProperty(field).GetRawText());
        return request.ToJsonString();
    }
}
