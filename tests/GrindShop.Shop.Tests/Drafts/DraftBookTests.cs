using GrindShop.Shop.Drafts;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;

namespace GrindShop.Shop.Tests.Drafts;

public sealed class DraftBookTests : IAsyncLifetime
{
    private static readonly Dictionary<string, string> Texts = new() { ["intake.lobeLiftIn"] = ".335 or so", ["notes"] = "", ["contact.name"] = "Ada\0 Merrow" };
    private TestDatabase _database = null!;
    private TestShop _shop = null!;

    private DraftBook Book => _shop.Of<DraftBook>();

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Empty.CopyAsync();
        _shop = new TestShop(_database);
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task What_was_typed_comes_back_as_it_was_typed()
    {
        var begun = (await Book.BeginAsync("key", Texts)).Value!;
        Assert.Matches("^[2-9A-HJKMNP-Z]{20}$", begun.Code);
        var found = (await Book.FindAsync(begun.Code))!;
        Assert.Equal(new Dictionary<string, string> { ["intake.lobeLiftIn"] = ".335 or so", ["contact.name"] = "Ada Merrow" }, found.Texts);
        Assert.Equal("key", found.SubmitKey);
    }

    [Fact]
    public async Task Begun_twice_under_one_key_it_is_one_draft()
    {
        var both = await Task.WhenAll(Book.BeginAsync("key", Texts), Book.BeginAsync("key", Texts));
        Assert.Single(both.Select(outcome => outcome.Value!.Code).Distinct());
    }

    [Fact]
    public async Task A_saving_that_knows_nothing_of_another_is_refused_and_loses_nothing()
    {
        var begun = (await Book.BeginAsync("key", Texts)).Value!;
        var one = await Book.KeepAsync(begun.Code, begun.Revision, new Dictionary<string, string> { ["notes"] = "on the phone" });
        var two = await Book.KeepAsync(begun.Code, begun.Revision, new Dictionary<string, string> { ["notes"] = "on the tablet" });
        Assert.Equal(2, one.Value!.Revision);
        Assert.Equal("stale", two.Refusal?.Code);
        Assert.Equal("on the phone", (await Book.FindAsync(begun.Code))!.Texts["notes"]);
    }

    [Fact]
    public async Task Of_two_savings_in_one_moment_one_is_refused()
    {
        var begun = (await Book.BeginAsync("key", Texts)).Value!;
        var both = await Task.WhenAll(Enumerable.Range(0, 4).Select(device => Book.KeepAsync(begun.Code, begun.Revision, new Dictionary<string, string> { ["notes"] = $"{device}" })));
        Assert.Single(both, outcome => outcome.Succeeded);
        Assert.Equal(2, (await Book.FindAsync(begun.Code))!.Revision);
    }

    [Fact]
    public async Task After_ninety_days_untouched_it_is_gone_and_a_sent_one_at_once()
    {
        var (old, sent) = ((await Book.BeginAsync("old", Texts)).Value!, (await Book.BeginAsync("sent", Texts)).Value!);
        await Book.EndAsync(sent.Code);
        Assert.Null(await Book.FindAsync(sent.Code));
        Assert.Equal("gone", (await Book.KeepAsync(sent.Code, 1, Texts)).Refusal?.Code);
        _shop.Clock.Advance(KeptDraft.Life - TimeSpan.FromMinutes(1));
        Assert.Equal(0, await Book.ClearOldAsync());
        _shop.Clock.Advance(TimeSpan.FromMinutes(1));
        Assert.Null(await Book.FindAsync(old.Code));
        Assert.Equal(1, await Book.ClearOldAsync());
    }

    [Fact]
    public async Task More_than_a_form_can_hold_is_refused() =>
        Assert.Equal("tooLong", (await Book.BeginAsync("key", new Dictionary<string, string> { ["notes"] = new('x', KeptDraft.LongestTexts) })).Refusal?.Code);
}
