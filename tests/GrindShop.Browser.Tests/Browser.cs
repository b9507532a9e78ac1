using GrindShop.Web.Tests;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace GrindShop.Browser.Tests;

/// <summary>One Chromium and one running shop for a test class.</summary>
public sealed class Browser : IAsyncLifetime
{
    private static readonly string[] Arguments =
        ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    private static readonly string Executable = Environment.GetEnvironmentVariable("CHROMIUM") is { Length: > 0 } named
        ? named
        : new[] { "/usr/bin/chromium-headless-shell", "/usr/bin/chromium" }.First(File.Exists);

    private readonly Dictionary<Person, string> _signedIn = [];
    private IPlaywright _playwright = null!;
    private IBrowser _chromium = null!;

    public ShopApp App { get; } = new();

    public Uri Address { get; private set; } = null!;

    public async Task InitializeAsync()
    {
        await App.InitializeAsync();
        Address = App.Listen();
        _playwright = await Playwright.CreateAsync();
        Assertions.SetDefaultExpectTimeout(20_000);
        _chromium = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = Executable, Args = Arguments });
    }

    public async Task DisposeAsync()
    {
        await _chromium.DisposeAsync();
        _playwright.Dispose();
        await ((IAsyncLifetime)App).DisposeAsync();
    }

    /// <summary>A fresh visitor; <paramref name="person"/> signs in the first time and comes with that sign-in later.</summary>
    public async Task<IPage> VisitAsync(Person? person = null, int width = 1280, int height = 900, bool dark = false)
    {
        var context = await _chromium.NewContextAsync(new()
        {
            BaseURL = Address.ToString(),
            ViewportSize = new() { Width = width, Height = height },
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
            StorageState = person is null ? null : _signedIn.GetValueOrDefault(person),
        });
        context.SetDefaultTimeout(30_000);
        var page = await context.NewPageAsync();
        if (person is not null && !_signedIn.ContainsKey(person))
        {
            await SignInAsync(page, person);
            _signedIn[person] = await context.StorageStateAsync();
        }
        return page;
    }

    private static async Task SignInAsync(IPage page, Person person)
    {
        await page.GotoAsync("/sign-in");
        await page.FillAsync("#user", person.User);
        await page.FillAsync("#password", person.Password);
        await page.ClickAsync("main button[type=submit]");
        await page.WaitForURLAsync(url => !url.Contains("/sign-in", StringComparison.Ordinal) && !url.EndsWith("/start", StringComparison.Ordinal));
    }
}

/// <summary>A demo sign-in of seed/people.json.</summary>
public sealed record Person(string User, string Password)
{
    public static readonly Person Owner = new("owner@grindshop.example", "Lathe-4-Owner!");
    public static readonly Person Desk = new("desk@grindshop.example", "Front-4-Desk!");
    public static readonly Person OtherDesk = new("desk2@grindshop.example", "Front-4-Desk!");
    public static readonly Person Floor = new("floor@grindshop.example", "Wheel-4-Floor!");
}

internal static class Pages
{
    /// <summary>Opens an address and waits until the page is connected to the shop.</summary>
    public static async Task OpenAsync(this IPage page, string address)
    {
        await page.GotoAsync(address);
        await page.WaitForSelectorAsync("html[data-live]", new() { State = WaitForSelectorState.Attached });
    }

    /// <summary>Chooses a file once the field takes one.</summary>
    public static async Task ChooseFileAsync(this IPage page, string selector, FilePayload file)
    {
        await Assertions.Expect(page.Locator(selector)).ToBeEnabledAsync();
        await page.SetInputFilesAsync(selector, file);
    }

    /// <summary>The text of a PDF, fetched as the page's person.</summary>
    public static async Task<string> PaperAsync(this IPage page, string address)
    {
        var response = await page.APIRequest.GetAsync(address);
        Assert.Equal(200, response.Status);
        using var document = PdfDocument.Open(await response.BodyAsync());
        return string.Join('\n', document.GetPages().Select(sheet => sheet.Text));
    }

    /// <summary>Presses Tab until the element of this id has the focus.</summary>
    public static async Task TabToAsync(this IPage page, string id)
    {
        for (var presses = 0; presses < 80; presses++)
        {
            if (await page.EvaluateAsync<string?>("document.activeElement.id") == id)
                return;
            await page.Keyboard.PressAsync("Tab");
        }
        Assert.Fail($"#{id} is not reached by Tab.");
    }

    /// <summary>Waits until the browser tab keeps these words: they have gone to the shop and come back.</summary>
    public static Task KeptInTabAsync(this IPage page, string words) =>
        page.WaitForFunctionAsync("words => Object.values(sessionStorage).some(kept => kept.includes(words))", words);

    public static async Task<string> TextAsync(this IPage page, string selector) => (await page.Locator(selector).InnerTextAsync()).Trim();
}
