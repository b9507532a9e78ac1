using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Grinds;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Starting;
using GrindShop.Shop.Tests.Demo;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;

namespace GrindShop.Shop.Tests.Grinds;

public sealed class GrindBookTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _shop = null!;

    private GrindBook Book => _shop.Of<GrindBook>();

    private static GrindEntry Entry => new()
    {
        Name = "Freshet",
        Use = StartUse.Street,
        Summary = "For the road.",
        Spec = new CamSpec { EngineFamily = "RV8-R", Lifter = LifterType.HydraulicRoller, Intake = new LobeWish { DurationAt050CrankDeg = 216, LobeLiftIn = .320 } },
    };

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public void Every_grind_of_the_demo_comes_out_of_a_blank()
    {
        foreach (var grind in SeedFiles.Scenario.Grinds)
            Assert.True(Shelf.Judge(SpecCompletion.Complete(grind.Entry.Spec, grind.Family).Grind!).Verdict == Verdict.FromStock, grind.Code);
    }

    [Fact]
    public async Task A_grind_lives_from_adding_to_retiring_and_back_with_a_line_each()
    {
        var added = (await Book.AddAsync(Entry, "asked for often", "Hollis Verne")).Value!;
        Assert.Equal("RV8-R-109", added.Code);
        var changed = (await Book.ChangeAsync(added.Code, added.Version, Entry with { Name = "Spate" }, "a better name", "Hollis Verne")).Value!;
        var retired = (await Book.RetireAsync(added.Code, changed.Version, "nobody wants it", "Hollis Verne")).Value!;
        Assert.DoesNotContain(await Book.ListAsync(), grind => grind.Code == added.Code);
        Assert.True((await Book.BringBackAsync(added.Code, retired.Version, "somebody does", "Hollis Verne")).Succeeded);
        var found = (await Book.FindAsync(added.Code))!;
        Assert.Equal([GrindEventKind.Added, GrindEventKind.Changed, GrindEventKind.Retired, GrindEventKind.BroughtBack], found.History.Select(line => line.Kind));
        Assert.Equal(["Freshet", "Spate", "Spate", "Spate"], found.History.Select(line => line.Entry.Name));
    }

    [Fact]
    public async Task Who_saves_on_an_older_state_is_told_and_changes_nothing()
    {
        var added = (await Book.AddAsync(Entry, "asked for", "Hollis Verne")).Value!;
        Assert.True((await Book.ChangeAsync(added.Code, added.Version, Entry with { Name = "Spate" }, "a better name", "Hollis Verne")).Succeeded);
        var late = await Book.ChangeAsync(added.Code, added.Version, Entry with { Name = "Torrent" }, "better still", "Somebody Else");
        Assert.Equal("stale", late.Refusal?.Code);
        Assert.Equal("Spate", (await Book.FindAsync(added.Code))!.Entry.Name);
    }

    [Fact]
    public async Task A_grind_that_contradicts_itself_is_not_taken()
    {
        var wrong = Entry with { Spec = Entry.Spec with { Intake = Entry.Spec.Intake with { AdvertisedDurationCrankDeg = 210 } } };
        Assert.Contains("longer than the duration at .050", (await Book.AddAsync(wrong, "asked for", "Hollis Verne")).Refusal?.Reason);
        Assert.Equal("badGrind", (await Book.AddAsync(Entry with { Name = "" }, "asked for", "Hollis Verne")).Refusal?.Code);
    }

    [Fact]
    public async Task Nothing_is_written_without_a_why_or_without_a_change()
    {
        Assert.Equal("why", (await Book.AddAsync(Entry, " ", "Hollis Verne")).Refusal?.Code);
        var added = (await Book.AddAsync(Entry, "asked for", "Hollis Verne")).Value!;
        Assert.Equal("why", (await Book.RetireAsync(added.Code, added.Version, "", "Hollis Verne")).Refusal?.Code);
        Assert.Equal("unchanged", (await Book.ChangeAsync(added.Code, added.Version, Entry, "for nothing", "Hollis Verne")).Refusal?.Code);
        Assert.Equal("badText", (await Book.ChangeAsync(added.Code, added.Version, Entry with { Name = "Spate" }, new string('w', 1000), "Hollis Verne")).Refusal?.Code);
        Assert.Single((await Book.FindAsync(added.Code))!.History);
    }

    [Fact]
    public async Task The_history_says_what_became_otherwise_newest_first()
    {
        var added = (await Book.AddAsync(Entry, "asked for", "Hollis Verne")).Value!;
        var wider = Entry with { Spec = Entry.Spec with { LobeSeparationCamDeg = 112 } };
        Assert.True((await Book.ChangeAsync(added.Code, added.Version, wider, "smoother idle", "Hollis Verne")).Succeeded);

        var lines = GrindChange.Lines((await Book.FindAsync(added.Code))!).ToList();

        Assert.Equal([GrindEventKind.Changed, GrindEventKind.Added], lines.Select(line => line.Line.Kind));
        Assert.Equal([new SpecChange("Lobe separation", null, "112 cam deg")], lines[0].Changes);
    }
}
