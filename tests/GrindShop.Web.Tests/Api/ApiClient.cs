using System.Net;
using System.Text;
using System.Text.Json;
using Xunit;

namespace GrindShop.Web.Tests.Api;

internal static class ApiClient
{
    public const string Lobe = """{"lobeLiftIn":0.335,"durationAt050CrankDeg":222,"advertisedDurationCrankDeg":272,"advertisedAtIn":0.006}""";
    public const string Roller = """{"kind":"roller","radiusIn":0.375}""";

    public static Task<HttpResponseMessage> PostRawAsync(this HttpClient client, string path, string json) =>
        client.PostAsync($"/api/v1/{path}", new StringContent(json, Encoding.UTF8, "application/json"));

    public static async Task<JsonElement> PostOkAsync(this HttpClient client, string path, string json)
    {
        using var response = await client.PostRawAsync(path, json);
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.StatusCode == HttpStatusCode.OK, $"{(int)response.StatusCode}: {text}");
        return JsonDocument.Parse(text).RootElement;
    }

    /// <summary>The errors of a 400, each field with its messages.</summary>
    public static async Task<Dictionary<string, string[]>> PostBadAsync(this HttpClient client, string path, string json)
    {
        using var response = await client.PostRawAsync(path, json);
        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
        return JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("errors").Deserialize<Dictionary<string, string[]>>()!;
    }

    public static double Number(this JsonElement element, string name) => element.GetProperty(name).GetDouble();
}
