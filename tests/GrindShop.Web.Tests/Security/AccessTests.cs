using System.Net;
using System.Net.Http.Json;
using System.Text.RegularExpressions;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace GrindShop.Web.Tests.Security;

/// <summary>Walks every page and endpoint as nobody and as each role.</summary>
public sealed partial class AccessTests(ShopApp app) : IClassFixture<ShopApp>
{
    private static readonly Dictionary<string, (string User, string Password)> People = new()
    {
        ["Owner"] = ("owner@grindshop.example", "Lathe-4-Owner!"),
        ["Desk"] = ("desk@grindshop.example", "Front-4-Desk!"),
        ["Floor"] = ("floor@grindshop.example", "Wheel-4-Floor!"),
    };

    /// <summary>Who may open which page; a new page must be written down here.</summary>
    private static readonly Dictionary<string, string[]> Pages = new()
    {
        ["/"] = Public,
        ["/spec"] = Public,
        ["/spec/guided"] = Public,
        ["/spec/resume/{code}"] = Public,
        ["/grinds"] = Public,
        ["/geometry"] = Public,
        ["/learn"] = Public,
        ["/learn/{slug}"] = Public,
        ["/api"] = Public,
        ["/track/{code?}"] = Public,
        ["/sign-in"] = Public,
        ["/not-found"] = Public,
        ["/not-allowed"] = Public,
        ["/error"] = Public,
        ["/start"] = ["Desk", "Floor", "Owner"],
        ["/desk"] = ["Desk", "Owner"],
        ["/desk/mail"] = ["Desk", "Owner"],
        ["/desk/mail/paste"] = ["Desk", "Owner"],
        ["/desk/orders/{number}"] = ["Desk", "Owner"],
        ["/desk/blanks"] = ["Desk", "Owner"],
        ["/desk/call"] = ["Desk", "Owner"],
        ["/desk/find"] = ["Desk", "Owner"],
        ["/floor"] = ["Floor", "Owner"],
        ["/floor/jobs/{code}"] = ["Floor", "Owner"],
        ["/office"] = ["Owner"],
        ["/office/blanks"] = ["Owner"],
        ["/office/blanks/new"] = ["Owner"],
        ["/office/blanks/import"] = ["Owner"],
        ["/office/blanks/{partnumber}"] = ["Owner"],
        ["/office/blanks/{partnumber}/edit"] = ["Owner"],
        ["/office/receive"] = ["Desk", "Floor", "Owner"],
        ["/lots/{number}"] = ["Desk", "Floor", "Owner"],
        ["/floor/count"] = ["Floor", "Owner"],
        ["/settings"] = ["Owner"],
        ["/settings/rules"] = ["Owner"],
        ["/settings/rules/{*key}"] = ["Owner"],
        ["/settings/history"] = ["Owner"],
        ["/settings/prices"] = ["Owner"],
        ["/settings/prices/{*key}"] = ["Owner"],
        ["/settings/shop"] = ["Owner"],
        ["/settings/people"] = ["Owner"],
        ["/settings/people/{id}"] = ["Owner"],
        ["/settings/starting"] = ["Owner"],
        ["/settings/grinds"] = ["Owner"],
        ["/settings/grinds/{code}"] = ["Owner"],
        ["/office/buying"] = ["Owner"],
        ["/office/buying/new"] = ["Owner"],
        ["/office/buying/{number}"] = ["Owner"],
        ["/office/millrun"] = ["Owner"],
        ["/office/shelf"] = ["Owner"],
        ["/office/map"] = ["Owner"],
    };

    private static string[] Public => ["nobody", "Desk", "Floor", "Owner"];

    public static TheoryData<string> Everybody => [.. Public];

    [Fact]
    public void Every_page_names_its_policy_or_says_that_it_is_public()
    {
        var pages = typeof(App).Assembly.GetTypes().Where(type => type.IsDefined(typeof(RouteAttribute), false)).ToList();
        Assert.All(pages, page => Assert.True(
            page.IsDefined(typeof(AllowAnonymousAttribute), true) || page.GetCustomAttributes(typeof(AuthorizeAttribute), true).Cast<AuthorizeAttribute>().Any(rule => rule.Policy is not null), page.Name));
        var routes = pages.SelectMany(page => page.GetCustomAttributes(typeof(RouteAttribute), false)).Cast<RouteAttribute>().Select(route => RouteConstraint().Replace(route.Template, "}").ToLowerInvariant());
        Assert.Equal(Pages.Keys.Order(), routes.Order());
    }

    [Fact]
    public void Every_endpoint_names_its_policy_or_says_that_it_is_public()
    {
        var silent = app.Services.GetServices<EndpointDataSource>().SelectMany(source => source.Endpoints).OfType<RouteEndpoint>()
            .Where(endpoint => endpoint.Metadata.GetMetadata<IAllowAnonymous>() is null && endpoint.Metadata.GetOrderedMetadata<IAuthorizeData>().All(rule => rule.Policy is null))
            .Where(endpoint => endpoint.RoutePattern.RawText is { } path && path != "{**path:file}" && !path.TrimStart('/').StartsWith('_'))
            .Select(endpoint => endpoint.RoutePattern.RawText);
        Assert.Empty(silent);
    }

    [Theory]
    [MemberData(nameof(Everybody))]
    public async Task Pages_open_to_those_they_belong_to_and_to_nobody_else(string who)
    {
        using var client = await SignedInAsync(who);
        foreach (var (template, allowed) in Pages.Where(page => page.Key is not "/not-found" and not "/error"))
        {
            var address = template.Replace("{code?}", "", StringComparison.Ordinal).Replace("{*key}", "gear/rear/steel/iron", StringComparison.Ordinal).Replace("{code}", "J1001", StringComparison.Ordinal).Replace("{number}", "C1001", StringComparison.Ordinal).Replace("{partnumber}", "RV8R-516-08", StringComparison.Ordinal);
            using var response = await client.GetAsync(address);
            var opened = response.StatusCode == HttpStatusCode.OK || (template == "/start" && response.Headers.Location?.OriginalString.Contains("sign-in", StringComparison.Ordinal) == false && response.Headers.Location.OriginalString.Contains("not-allowed", StringComparison.Ordinal) == false);
            Assert.True(opened == allowed.Contains(who), $"{who} at {address}: {(int)response.StatusCode} {response.Headers.Location}");
        }
    }

    [Theory]
    [InlineData("/papers/traveler/J1001.pdf", "Desk", "Floor", "Owner")]
    [InlineData("/papers/spec-card/job/J1001.pdf", "Desk", "Floor", "Owner")]
    [InlineData("/papers/label/L466.pdf", "Desk", "Floor", "Owner")]
    [InlineData("/papers/slip/C1001.pdf", "Desk", "Floor", "Owner")]
    [InlineData("/office/blanks.csv", "Owner")]
    [InlineData("/papers/purchase/PO-1001.pdf", "Owner")]
    public async Task Papers_of_the_shop_are_for_the_shop(string address, params string[] allowed)
    {
        foreach (var who in Public)
        {
            using var client = await SignedInAsync(who);
            using var response = await client.GetAsync(address);
            Assert.True((response.StatusCode == HttpStatusCode.OK) == allowed.Contains(who), $"{who}: {(int)response.StatusCode}");
        }
    }

    [Fact]
    public async Task A_wrong_password_does_not_say_which_half_was_wrong()
    {
        using var known = await SignInAsync(Client(), People["Desk"].User, "wrong-Password-1");
        using var unknown = await SignInAsync(Client(), "nobody@grindshop.example", "wrong-Password-1");
        foreach (var response in new[] { known, unknown })
            Assert.Contains("do not belong together", await response.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task Signing_in_never_leads_to_another_site()
    {
        using var response = await SignInAsync(Client(), People["Desk"].User, People["Desk"].Password, "?returnUrl=//evil.example/");
        Assert.Equal("/start", new Uri(new Uri("http://localhost"), response.Headers.Location!).AbsolutePath);
        Assert.Equal("localhost", new Uri(new Uri("http://localhost"), response.Headers.Location!).Host);
    }

    [Fact]
    public async Task Health_answers_for_everybody()
    {
        foreach (var address in new[] { "/healthz/live", "/healthz/ready" })
            Assert.Equal("Healthy", await Client().GetStringAsync(address));
    }

    [Fact]
    public async Task The_api_document_names_every_calculation()
    {
        var document = await Client().GetFromJsonAsync<System.Text.Json.JsonElement>("/openapi/v1.json");
        var paths = document.GetProperty("paths").EnumerateObject().Select(path => path.Name).ToList();
        foreach (var path in new[] { "calc/lobe", "calc/stock", "calc/window", "calc/master", "calc/timing", "calc/contact", "engines", "blanks", "feasibility", "enquiries", "track/{code}" })
            Assert.Contains($"/api/v1/{path}", paths);
    }

    [Fact]
    public async Task An_unknown_address_is_a_404_for_people_and_programs()
    {
        using var page = await Client().GetAsync("/no-such-page");
        using var api = await Client().GetAsync("/api/v1/no-such-thing");
        Assert.Equal((HttpStatusCode.NotFound, HttpStatusCode.NotFound), (page.StatusCode, api.StatusCode));
        Assert.Contains("nothing at this address", await page.Content.ReadAsStringAsync());
        Assert.Equal("application/problem+json", api.Content.Headers.ContentType?.MediaType);
    }

    private HttpClient Client() => app.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });

    private async Task<HttpClient> SignedInAsync(string who)
    {
        var client = Client();
        if (who == "nobody")
            return client;
        using var response = await SignInAsync(client, People[who].User, People[who].Password);
        Assert.Equal(HttpStatusCode.Redirect, response.StatusCode);
        return client;
    }

    private static async Task<HttpResponseMessage> SignInAsync(HttpClient client, string user, string password, string query = "")
    {
        var page = await client.GetStringAsync("/sign-in" + query);
        var token = Token().Match(page).Groups[1].Value;
        return await client.PostAsync("/sign-in" + query, new FormUrlEncodedContent(new Dictionary<string, string>
        {
            ["_handler"] = "sign-in",
            ["__RequestVerificationToken"] = token,
            ["Input.User"] = user,
            ["Input.Password"] = password,
        }));
    }

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"([^\"]+)\"")]
    private static partial Regex Token();

    [GeneratedRegex(@":\w+\}")]
    private static partial Regex RouteConstraint();
}
