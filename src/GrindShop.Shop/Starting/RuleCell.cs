using System.Globalization;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Starting;

/// <summary>One figure of the rules: where it stands, how it is named, its range, and how it is read and changed.</summary>
public sealed record RuleCell(string Path, FieldRange Range, Func<StartRules, double> Get, Func<StartRules, double, StartRules> Set)
{
    private static readonly FieldRange Rpm = new("Speed", 300, 12000, "rpm");
    private static readonly FieldRange Change = new("Change of duration", -40, 40, "crank degrees");
    private static readonly FieldRange Separation = new("Change of lobe separation", -8, 8, "cam degrees");
    private static readonly FieldRange Advance = new("Change of advance", -8, 8, "crank degrees");
    private static readonly FieldRange ExhaustLonger = new("Exhaust longer", -20, 30, "crank degrees");
    private static readonly FieldRange Lift = new("Lobe lift at 220 degrees", .200, .450, "in");
    private static readonly FieldRange LiftStep = new("Lift with each degree", 0, .004, "in");
    private static readonly FieldRange Inches = new("Usual cylinder", 8, 130, "cubic inches");
    private static readonly FieldRange PerTen = new("Longer with each 10 cubic inches", 0, 10, "crank degrees");
    private static readonly FieldRange Percent = new("Lobe lift", 50, 130, "percent");

    /// <summary>Every figure of these rules, in the order in which people read them.</summary>
    public static IReadOnlyList<RuleCell> Of(StartRules rules) =>
    [
        .. Speeds("top", rules.Top, all => all.Top, (all, rows) => all with { Top = rows }),
        .. Speeds("low", rules.Low, all => all.Low, (all, rows) => all with { Low = rows }),
        new("cylinder.usual", Inches, all => all.Cylinder.UsualCubicInches, (all, value) => all with { Cylinder = all.Cylinder with { UsualCubicInches = value } }),
        new("cylinder.perTen", PerTen, all => all.Cylinder.LongerPerTenCrankDeg, (all, value) => all with { Cylinder = all.Cylinder with { LongerPerTenCrankDeg = value } }),
        .. rules.Uses.SelectMany(Use),
        .. rules.Idles.SelectMany(Idle),
        .. rules.Lifters.SelectMany(Lifter),
        .. rules.Families.Select(Family),
    ];

    /// <summary>"everyday street, change of duration": the cell in words, for histories.</summary>
    public string Words => Path.Split('.') switch
    {
        ["top", var row, _] => $"up to, row {Row(row)}, {Name}",
        ["low", var row, _] => $"from, row {Row(row)}, {Name}",
        ["uses", var use, _] => $"{Enum.Parse<StartUse>(use).Words()}, {Name}",
        ["idles", var idle, _] => $"{Enum.Parse<IdleWish>(idle).Words()} idle, {Name}",
        ["lifters", var lifter, _] => $"{Enum.Parse<LifterType>(lifter).Words()}, {Name}",
        ["families", var family] => $"{family}, {Name}",
        _ => Name,
    };

    private string Name => char.ToLowerInvariant(Range.Name[0]) + Range.Name[1..];

    public string Text(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    private static int Row(string index) => int.Parse(index, CultureInfo.InvariantCulture) + 1;

    private static IEnumerable<RuleCell> Speeds(string table, IReadOnlyList<RpmRow> now, Func<StartRules, IReadOnlyList<RpmRow>> get, Func<StartRules, IReadOnlyList<RpmRow>, StartRules> set) =>
        Enumerable.Range(0, now.Count).SelectMany(row => new RuleCell[]
        {
            new($"{table}.{row}.rpm", Rpm, all => get(all)[row].Rpm, (all, value) => set(all, With(get(all), row, get(all)[row] with { Rpm = value }))),
            new($"{table}.{row}.crankDeg", FieldRange.DurationAt050, all => get(all)[row].CrankDeg, (all, value) => set(all, With(get(all), row, get(all)[row] with { CrankDeg = value }))),
        });

    private static IEnumerable<RuleCell> Use(UseRow row, int at) =>
    [
        new($"uses.{row.Use}.longer", Change, all => all.Uses[at].LongerCrankDeg, (all, value) => all with { Uses = With(all.Uses, at, all.Uses[at] with { LongerCrankDeg = value }) }),
        new($"uses.{row.Use}.exhaust", ExhaustLonger, all => all.Uses[at].ExhaustLongerCrankDeg, (all, value) => all with { Uses = With(all.Uses, at, all.Uses[at] with { ExhaustLongerCrankDeg = value }) }),
        new($"uses.{row.Use}.separation", Separation, all => all.Uses[at].SeparationCamDeg, (all, value) => all with { Uses = With(all.Uses, at, all.Uses[at] with { SeparationCamDeg = value }) }),
        new($"uses.{row.Use}.advance", Advance, all => all.Uses[at].AdvanceCrankDeg, (all, value) => all with { Uses = With(all.Uses, at, all.Uses[at] with { AdvanceCrankDeg = value }) }),
    ];

    private static IEnumerable<RuleCell> Idle(IdleRow row, int at) =>
    [
        new($"idles.{row.Idle}.longer", Change, all => all.Idles[at].LongerCrankDeg, (all, value) => all with { Idles = With(all.Idles, at, all.Idles[at] with { LongerCrankDeg = value }) }),
        new($"idles.{row.Idle}.separation", Separation, all => all.Idles[at].SeparationCamDeg, (all, value) => all with { Idles = With(all.Idles, at, all.Idles[at] with { SeparationCamDeg = value }) }),
    ];

    private static IEnumerable<RuleCell> Lifter(LifterRow row, int at) =>
    [
        new($"lifters.{row.Lifter}.longer", Change, all => all.Lifters[at].LongerCrankDeg, (all, value) => all with { Lifters = With(all.Lifters, at, all.Lifters[at] with { LongerCrankDeg = value }) }),
        new($"lifters.{row.Lifter}.lift", Lift, all => all.Lifters[at].LiftAt220In, (all, value) => all with { Lifters = With(all.Lifters, at, all.Lifters[at] with { LiftAt220In = value }) }),
        new($"lifters.{row.Lifter}.liftPerDegree", LiftStep, all => all.Lifters[at].LiftPerDegreeIn, (all, value) => all with { Lifters = With(all.Lifters, at, all.Lifters[at] with { LiftPerDegreeIn = value }) }),
    ];

    private static RuleCell Family(FamilyRow row, int at) =>
        new($"families.{row.EngineFamily}", Percent, all => all.Families[at].LiftPercent, (all, value) => all with { Families = With(all.Families, at, all.Families[at] with { LiftPercent = value }) });

    private static List<T> With<T>(IReadOnlyList<T> rows, int at, T row) => [.. rows.Select((old, index) => index == at ? row : old)];
}
