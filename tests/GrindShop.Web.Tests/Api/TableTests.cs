using System.Net;
using System.Text.Json;
using Xunit;

namespace GrindShop.Web.Tests.Api;

public sealed class TableTests(ShopApp app) : IClassFixture<ShopApp>
{
    private const string Cam = "engine=RV8-R&lifter=HydraulicRoller&i050=222&ilift=.335&iadv=272&iat=.006";
    private readonly HttpClient _client = app.CreateClient();

    [Fact]
    public async Task The_wheel_table_is_the_kernels_with_a_line_that_says_what_it_is_for()
    {
        using var response = await _client.GetAsync($"/tables/grinding.csv?{Cam}&lobe=intake&step=1&wheelRadiusIn=9&baseCircleDiameterIn=1.1");
        Assert.Equal((HttpStatusCode.OK, "text/csv", "wheel-centre-intake.csv"), (response.StatusCode, response.Content.Headers.ContentType?.MediaType, response.Content.Headers.ContentDisposition?.FileName));
        var lines = (await response.Content.ReadAsStringAsync()).Split('\n');
        Assert.Equal("# intake lobe: lift 0.3350 in; 222 crank deg at .050 in; 272 at 0.006 in; hydraulic roller 0.750 in; base circle 1.1000 in; wheel radius 9.000 in. Verify on the machine.", lines[0]);
        Assert.Equal("# wheel centre on the base circle 9.550000 in from the shaft axis", lines[1]);
        Assert.Equal(["cam angle (deg),wheel lift (in)", "-180,0.000000"], lines[2..4]);
        // At the nose every follower is lifted by the lobe lift.
        Assert.Equal("0,0.335000", lines[3 + 180]);
        Assert.Equal(360 + 4, lines.Length);
    }

    [Fact]
    public async Task The_contour_table_has_its_nose_at_base_radius_plus_lift()
    {
        var lines = (await _client.GetStringAsync($"/tables/grinding.csv?{Cam}&table=contour&lobe=exhaust&step=5&baseCircleDiameterIn=1.1")).Split('\n');
        Assert.Equal("angle (deg),follower lift (in),surface radius (in)", lines[1]);
        Assert.Equal("-180,0.000000,0.550000", lines[2]);
        Assert.Equal("0,0.335000,0.885000", lines[2 + 36]);
    }

    [Fact]
    public async Task Lobe_angles_come_front_to_rear()
    {
        var lines = (await _client.GetStringAsync($"/tables/lobe-angles.csv?{Cam}&lsa=110&icl=106")).Split('\n');
        Assert.Equal("lobe,cylinder,valve,from dowel (cam deg),work head (cam deg),fullest open (crank deg)", lines[0]);
        // Half the centreline and the family's datum of 3.5 back from cylinder 1's lifter axis.
        Assert.Equal("3,1,intake,303.5000,56.5000,106.0000", lines[3]);
        Assert.Equal(18, lines.Length);
    }

    [Theory]
    [InlineData("grinding", "&baseCircleDiameterIn=", "baseCircleDiameterIn")]
    [InlineData("grinding", "&baseCircleDiameterIn=1.1&step=.00001", "step")]
    [InlineData("grinding", "&baseCircleDiameterIn=1.1&step=NaN", "step")]
    [InlineData("grinding", "&baseCircleDiameterIn=1.1&wheelRadiusIn=1e9", "wheelRadiusIn")]
    [InlineData("grinding", "&baseCircleDiameterIn=1.1&lobe=left", "lobe")]
    [InlineData("grinding", "&baseCircleDiameterIn=1.1&table=x", "table")]
    [InlineData("grinding", "&baseCircleDiameterIn=1.1&lsa=9", "lsa")]
    [InlineData("lobe-angles", "&icl=abc", "icl")]
    [InlineData("lobe-angles", "&order=1-1-1", "order")]
    public async Task Wrong_input_is_a_400_that_names_the_field(string table, string more, string field) => Assert.Equal([field], await ErrorsAsync($"{table}.csv?{Cam}{more}"));

    [Fact]
    public async Task Without_a_cam_it_says_what_is_needed() => Assert.Equal(["engine", "i050", "ilift", "lifter"], (await ErrorsAsync("lobe-angles.csv")).Order());

    [Fact]
    public async Task A_wheel_too_large_for_the_hollow_flank_gets_no_table()
    {
        const string hollow = "engine=RV8-R&lifter=HydraulicRoller&i050=215&ilift=.420&iadv=262&iat=.006";
        Assert.Equal(["wheelRadiusIn"], await ErrorsAsync($"grinding.csv?{hollow}&baseCircleDiameterIn=1.0&wheelRadiusIn=20"));
    }

    private async Task<IEnumerable<string>> ErrorsAsync(string address)
    {
        using var response = await _client.GetAsync($"/tables/{address}");
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.StatusCode == HttpStatusCode.BadRequest, $"{(int)response.StatusCode}: {text}");
        return JsonDocument.Parse(text).RootElement.GetProperty("errors").EnumerateObject().Select(field => field.Name);
    }
}
