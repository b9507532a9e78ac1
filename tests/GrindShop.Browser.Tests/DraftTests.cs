using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>Nothing typed is lost: not by a dropped connection, not by a reload, and not by a second device.</summary>
public sealed class DraftTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task What_is_typed_while_the_connection_is_gone_is_there_when_it_is_back()
    {
        var page = await browser.VisitAsync();
        var line = await Line.OfAsync(page);
        await FormAsync(page);
        await page.FillAsync("#intake-duration-050", "222");

        await line.CutAsync();
        await Expect(page.Locator("#components-reconnect-modal")).ToContainTextAsync("connection to the shop is lost");
        await page.FillAsync("#intake-lobe-lift", ".335");
        await page.FillAsync("#contact-name", "Ida Torrance");
        await page.SelectOptionAsync("#distributor-gear", "Bronze");
        await line.MendAsync();

        await Expect(page.Locator("#components-reconnect-modal")).ToBeHiddenAsync();
        await Expect(page.Locator(".verdict")).ToContainTextAsync("Can be ground");
        await Expect(page.Locator("#intake-lobe-lift")).ToHaveValueAsync(".335");
        await Expect(page.Locator("#contact-name")).ToHaveValueAsync("Ida Torrance");
        await Expect(page.Locator(".gears")).ToContainTextAsync("Bronze (yours)");
    }

    [Fact]
    public async Task A_page_loaded_again_without_a_connection_before_stands_as_it_was_typed()
    {
        var page = await browser.VisitAsync();
        var line = await Line.OfAsync(page);
        await FormAsync(page);
        await line.CutAsync();
        await page.FillAsync("#intake-lobe-lift", ".3");
        await page.FillAsync("#notes", "before the fair");
        await line.MendAsync();
        await page.ReloadAsync();
        await Expect(page.Locator("#intake-lobe-lift")).ToHaveValueAsync(".3");
        await Expect(page.Locator("#notes")).ToHaveValueAsync("before the fair");
        await Expect(page.Locator("#engine-family")).ToHaveValueAsync("RV8-R");
    }

    [Fact]
    public async Task Another_device_goes_on_by_the_link_and_neither_overwrites_the_other_unseen()
    {
        var (phone, tablet) = (await browser.VisitAsync(width: 390), await browser.VisitAsync());
        await FormAsync(phone);
        await phone.FillAsync("#contact-name", "Ida Torrance");
        await Expect(phone.Locator("#resume-link")).ToHaveCountAsync(1);
        await KeptAsync(phone);
        var link = await phone.Locator("#resume-link").InputValueAsync();

        await tablet.OpenAsync(new Uri(link).AbsolutePath);
        await Expect(tablet.Locator("#contact-name")).ToHaveValueAsync("Ida Torrance");
        await Expect(tablet).ToHaveURLAsync(new Regex("/spec$"));
        await tablet.FillAsync("#notes", "typed on the tablet");
        await KeptAsync(tablet);

        await phone.FillAsync("#notes", "typed on the phone");
        await Expect(phone.Locator("#draft-choice")).ToContainTextAsync("typed on the tablet");
        await Expect(phone.Locator("#notes")).ToHaveValueAsync("typed on the phone");
        await phone.ClickAsync("#take-theirs");
        await Expect(phone.Locator("#notes")).ToHaveValueAsync("typed on the tablet");
        await Expect(phone.Locator("#draft-choice")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_shared_cam_shows_its_verdict_at_once_also_without_scripts_and_nothing_of_its_sender()
    {
        var page = await browser.VisitAsync();
        await FormAsync(page);
        await page.FillAsync("#intake-duration-050", "222");
        await page.FillAsync("#intake-lobe-lift", ".335");
        await page.FillAsync("#contact-name", "Ida Torrance");
        await Expect(page.Locator("#share-link")).ToHaveValueAsync(new Regex("i050=222"));
        var link = new Uri(await page.Locator("#share-link").InputValueAsync()).PathAndQuery;

        var plain = await page.Context.Browser!.NewContextAsync(new() { BaseURL = new Uri(page.Url).GetLeftPart(UriPartial.Authority), JavaScriptEnabled = false });
        var other = await plain.NewPageAsync();
        await other.GotoAsync(link);
        await Expect(other.Locator(".verdict")).ToContainTextAsync("Can be ground");
        await Expect(other.Locator("#answer svg[role=img]").First).ToBeVisibleAsync();
        await Expect(other).ToHaveTitleAsync(new Regex("Ridgetop V8.*222/222.*Can be ground"));
        await Expect(other.Locator("#contact-name")).ToHaveValueAsync("");

        await KeptAsync(page);
        await page.OpenAsync(link);
        await page.Locator("#earlier-draft button").ClickAsync();
        await Expect(page.Locator("#contact-name")).ToHaveValueAsync("Ida Torrance");
    }

    [Fact]
    public async Task A_draft_begun_from_a_grind_comes_back_and_the_one_before_is_not_lost()
    {
        var page = await browser.VisitAsync();
        await FormAsync(page);
        await page.FillAsync("#contact-name", "Ida Torrance");
        await KeptAsync(page);

        await page.OpenAsync("/spec?grind=RV8-R-101");
        await Expect(page.Locator("#earlier-draft")).ToContainTextAsync("has a draft of yours");
        await page.ReloadAsync();
        await Expect(page.Locator("#earlier-draft")).ToContainTextAsync("has a draft of yours");
        var duration = await page.InputValueAsync("#intake-duration-050");
        await page.FillAsync("#notes", "begun from a grind");
        await Expect(page).ToHaveURLAsync(new Regex("/spec$"));
        await page.ReloadAsync();
        await Expect(page.Locator("#notes")).ToHaveValueAsync("begun from a grind");
        await Expect(page.Locator("#intake-duration-050")).ToHaveValueAsync(duration);
        await KeptAsync(page);

        await page.ClickAsync("#earlier-draft button");
        await Expect(page.Locator("#contact-name")).ToHaveValueAsync("Ida Torrance");
        await Expect(page.Locator("#notes")).ToHaveValueAsync("");
        await page.ReloadAsync();
        await Expect(page.Locator("#contact-name")).ToHaveValueAsync("Ida Torrance");
        await page.ClickAsync("#earlier-draft button");
        await Expect(page.Locator("#notes")).ToHaveValueAsync("begun from a grind");
        await Expect(page.Locator("#contact-name")).ToHaveValueAsync("");
    }

    /// <summary>The shop has everything that stands there.</summary>
    private static async Task KeptAsync(IPage page)
    {
        await Expect(page.Locator("form[data-unkept]")).ToHaveCountAsync(0);
        await Expect(page.Locator("#draft-state")).ToContainTextAsync("is kept");
    }

    private static async Task FormAsync(IPage page)
    {
        await page.OpenAsync("/spec");
        await page.SelectOptionAsync("#engine-family", "RV8-R");
        await page.SelectOptionAsync("#lifter", "HydraulicRoller");
    }
}

/// <summary>The line between a page and the shop, to be cut and mended: every socket of the page breaks, and no new one is let through.</summary>
internal sealed class Line
{
    private readonly List<IWebSocketRoute> _sockets = [];
    private readonly IPage _page;
    private bool _isCut;

    private Line(IPage page) => _page = page;

    public static async Task<Line> OfAsync(IPage page)
    {
        var line = new Line(page);
        await page.RouteWebSocketAsync("**/_blazor**", line.Connect);
        return line;
    }

    public async Task CutAsync()
    {
        _isCut = true;
        await _page.Context.SetOfflineAsync(true);
        foreach (var socket in _sockets)
            await socket.CloseAsync(new() { Code = 3001, Reason = "cut" });
        _sockets.Clear();
    }

    public Task MendAsync()
    {
        _isCut = false;
        return _page.Context.SetOfflineAsync(false);
    }

    private void Connect(IWebSocketRoute socket)
    {
        if (_isCut)
            return;
        socket.ConnectToServer();
        _sockets.Add(socket);
    }
}
