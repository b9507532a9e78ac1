using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Starting;

/// <summary>May these rules be used? Every figure in range, every choice with its one row, and more speed never a shorter cam.</summary>
public static class StartRuleCheck
{
    public const int LongestWhy = 200;

    public static IReadOnlyList<FieldProblem> Problems(StartRules rules) =>
    [
        .. RuleCell.Of(rules).Select(cell => cell.Range.Check(cell.Get(rules), cell.Path)).OfType<FieldProblem>(),
        .. Table("top", rules.Top),
        .. Table("low", rules.Low),
        .. Each("uses", rules.Uses.Select(row => row.Use)),
        .. Each("idles", rules.Idles.Select(row => row.Idle)),
        .. Each("lifters", rules.Lifters.Select(row => row.Lifter)),
        .. Texts(rules),
    ];

    /// <summary>What differs, cell by cell: "everyday street, change of duration: 0 to 2".</summary>
    public static IEnumerable<string> Changes(StartRules before, StartRules after)
    {
        var old = RuleCell.Of(before).ToDictionary(cell => cell.Path, cell => cell.Get(before));
        foreach (var cell in RuleCell.Of(after))
            if (!old.TryGetValue(cell.Path, out var was))
                yield return $"{cell.Words}: {cell.Text(cell.Get(after))}";
            else if (was != cell.Get(after))
                yield return $"{cell.Words}: {cell.Text(was)} to {cell.Text(cell.Get(after))}";
        if (!Reasons(before).SequenceEqual(Reasons(after)))
            yield return "reasons reworded";
    }

    private static IEnumerable<FieldProblem> Table(string name, IReadOnlyList<RpmRow> rows)
    {
        if (rows.Count == 0)
            yield return new FieldProblem(name, "The table needs at least one row.");
        for (var row = 1; row < rows.Count; row++)
        {
            if (rows[row].Rpm <= rows[row - 1].Rpm)
                yield return new FieldProblem($"{name}.{row}.rpm", "Speeds rise from row to row.", rows[row - 1].Rpm);
            if (rows[row].CrankDeg < rows[row - 1].CrankDeg)
                yield return new FieldProblem($"{name}.{row}.crankDeg", "A higher speed never takes a shorter duration.", rows[row - 1].CrankDeg);
        }
    }

    private static IEnumerable<FieldProblem> Each<T>(string name, IEnumerable<T> rows)
        where T : struct, Enum =>
        rows.Order().SequenceEqual(Enum.GetValues<T>().Order()) ? [] : [new FieldProblem(name, $"Every one of {string.Join(", ", Enum.GetNames<T>())} needs one row.")];

    private static IEnumerable<FieldProblem> Texts(StartRules rules) =>
        Reasons(rules).Select(reason => SpecCheck.Text(reason, LongestWhy, "why", "A reason")).OfType<FieldProblem>();

    private static IEnumerable<string> Reasons(StartRules rules) =>
        [.. rules.Uses.Select(row => row.Why), .. rules.Idles.Select(row => row.Why), .. rules.Lifters.Select(row => row.Why)];
}
