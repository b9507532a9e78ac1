using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Starting;

namespace GrindShop.Shop.Grinds;

/// <summary>What stands in the shop's list of a grind.</summary>
public sealed record GrindEntry
{
    public const int LongestName = 60, LongestSummary = 300;

    public required string Name { get; init; }

    public required StartUse Use { get; init; }

    public required CamSpec Spec { get; init; }

    /// <summary>For whom it is, in plain words.</summary>
    public required string Summary { get; init; }

    /// <summary>What is wrong with it, field by field.</summary>
    public IReadOnlyList<FieldProblem> Problems(EngineFamily? family)
    {
        FieldProblem?[] texts =
        [
            string.IsNullOrWhiteSpace(Name) ? new FieldProblem("name", "Give the grind a name.") : SpecCheck.Text(Name, LongestName, "name", "Name"),
            string.IsNullOrWhiteSpace(Summary) ? new FieldProblem("summary", "Say in a sentence for whom it is.") : SpecCheck.Text(Summary, LongestSummary, "summary", "The sentence"),
        ];
        var completed = SpecCompletion.Complete(Spec, family);
        return [.. texts.OfType<FieldProblem>(), .. completed.Problems, .. completed.Needed];
    }
}

public enum GrindEventKind
{
    Added,
    Changed,
    Retired,
    BroughtBack,
}

/// <summary>A grind that the shop offers under a name, for customers to start from. Every change is one line of its history.</summary>
public sealed class CatalogGrind
{
    private readonly List<GrindEvent> _history = [];

    private CatalogGrind()
    {
    }

    public int Id { get; private set; }

    /// <summary>The number in the shop's list, never used twice.</summary>
    public string Code { get; private set; } = "";

    public int EngineFamilyId { get; private set; }

    public EngineFamily EngineFamily { get; private set; } = null!;

    public GrindEntry Entry { get; private set; } = null!;

    /// <summary>Not offered any more; what was ordered by it keeps its figures.</summary>
    public bool Retired { get; private set; }

    public uint Version { get; private set; }

    public IReadOnlyList<GrindEvent> History => _history;

    public static CatalogGrind Add(string code, EngineFamily family, GrindEntry entry, string by, DateTimeOffset at, string why)
    {
        var grind = new CatalogGrind { Code = code, EngineFamily = family, Entry = entry };
        grind.Note(GrindEventKind.Added, by, at, why);
        return grind;
    }

    public Outcome<CatalogGrind> Change(EngineFamily family, GrindEntry entry, string by, DateTimeOffset at, string why)
    {
        if (GrindChange.Between(Entry, entry).Count == 0)
            return new Refusal("unchanged", "This is what the grind says already.");
        (EngineFamily, Entry) = (family, entry);
        return Note(GrindEventKind.Changed, by, at, why.Trim());
    }

    public Outcome<CatalogGrind> Retire(string by, DateTimeOffset at, string why)
    {
        if (Retired)
            return new Refusal("retired", "It is retired already.");
        Retired = true;
        return Note(GrindEventKind.Retired, by, at, why);
    }

    public Outcome<CatalogGrind> BringBack(string by, DateTimeOffset at, string why)
    {
        if (!Retired)
            return new Refusal("offered", "It is offered already.");
        Retired = false;
        return Note(GrindEventKind.BroughtBack, by, at, why);
    }

    private CatalogGrind Note(GrindEventKind kind, string by, DateTimeOffset at, string why)
    {
        _history.Add(new GrindEvent(kind, by, at, why, Entry));
        return this;
    }
}

/// <summary>One line of a grind's history, with the entry as it stood from then on. Lines are only ever added.</summary>
public sealed class GrindEvent(GrindEventKind kind, string by, DateTimeOffset at, string why, GrindEntry entry)
{
    public long Id { get; private set; }

    public int CatalogGrindId { get; private set; }

    public GrindEventKind Kind { get; private set; } = kind;

    public string By { get; private set; } = by;

    public DateTimeOffset At { get; private set; } = at;

    public string Why { get; private set; } = why;

    public GrindEntry Entry { get; private set; } = entry;
}
