using System.Globalization;
using GrindShop.Shop.Feasibility;

namespace GrindShop.Shop.Allocating;

/// <summary>
/// Which blank to take for a cam: what can be used before what cannot, what is here before what has to come, hardened before soft, sure gears
/// before doubtful ones, then the larger base circle, the more case left, the lesser removal and the lower cost. Each place is explained by the
/// first of these in which it stands behind the one above.
/// </summary>
public static class BlankRanking
{
    /// <summary>Base circles and cases nearer than this count as the same, in.</summary>
    private const double SameIn = .010;

    /// <summary>Removals nearer than this count as the same, in.</summary>
    private const double SameRemovalIn = .005;

    private sealed record Question(Func<BlankOption, double> LowerIsBetter, Func<BlankOption, BlankOption, string> Words);

    private static readonly Question[] Questions =
    [
        new(option => option.Fit.Fits ? 0 : 1, (_, behind) => $"does not fit without a change: {Small(behind.Fit.Reasons[0])}"),
        new(option => option.Fit.Gear.Verdict == GearVerdict.No ? 1 : 0, (_, behind) => $"the distributor gear forbids it: {Small(behind.Fit.Gear.Reason)}"),
        new(option => option.Available > 0 ? 0 : 1, (_, behind) => $"none is free now; {Coming(behind)}"),
        new(option => option.Available > 0 ? 0 : (option.NextReceipt ?? DateOnly.MaxValue).DayNumber, (_, behind) => $"it comes later: {Coming(behind)}"),
        new(option => option.Fit.NeedsHeatTreat ? 1 : 0, (_, _) => "it is soft and has to go to the heat treater"),
        new(option => option.Fit.Gear.Verdict == GearVerdict.Caution ? 1 : 0, (_, behind) => $"its gear needs care: {Small(behind.Fit.Gear.Reason)}"),
        new(option => -Steps(option.BaseCircleIn, SameIn), (ahead, behind) => $"its base circle is {In(ahead.BaseCircleIn - behind.BaseCircleIn)} smaller"),
        new(option => option.Fit.LeastCaseLeftIn is { } left ? -Steps(left, SameIn) : double.NegativeInfinity, (_, behind) => $"less case is left, {In(behind.Fit.LeastCaseLeftIn ?? 0)}"),
        new(option => Steps(option.RemovalIn, SameRemovalIn), (ahead, behind) => $"{In(behind.RemovalIn - ahead.RemovalIn)} more has to come off"),
        new(option => (double)option.Part.Cost, (ahead, behind) => string.Create(CultureInfo.InvariantCulture, $"it costs ${behind.Part.Cost - ahead.Part.Cost:N2} more")),
    ];

    public static IReadOnlyList<RankedBlank> Of(IEnumerable<BlankOption> options)
    {
        var ordered = options.Order(Comparer<BlankOption>.Create(Compare)).ToList();
        return [.. ordered.Select((option, i) => new RankedBlank(option, i + 1, i == 0 ? First(option) : Behind(ordered[i - 1], option)))];
    }

    private static int Compare(BlankOption one, BlankOption other) =>
        Questions.Select(question => question.LowerIsBetter(one).CompareTo(question.LowerIsBetter(other))).FirstOrDefault(
            order => order != 0, string.CompareOrdinal(one.Part.PartNumber, other.Part.PartNumber));

    private static string First(BlankOption option) => option switch
    {
        { CanBeTaken: true } => string.Create(CultureInfo.InvariantCulture, $"First: it fits as it is, {option.Available} free, base circle {In(option.BaseCircleIn)}, at most {In(option.RemovalIn)} comes off."),
        { Fit.Usable: true } => $"First of those that fit, but none is free now; {Coming(option)}.",
        _ => $"Nothing can be used as it is; this one comes nearest, but {Questions.First(question => question.LowerIsBetter(option) > 0).Words(option, option).TrimEnd('.')}.",
    };

    private static string Behind(BlankOption ahead, BlankOption behind)
    {
        var decisive = behind.Fit.Usable
            ? Questions.FirstOrDefault(question => question.LowerIsBetter(ahead) < question.LowerIsBetter(behind))
            : Questions.First(question => question.LowerIsBetter(behind) > 0);
        var why = decisive?.Words(ahead, behind).TrimEnd('.') ?? "it is its equal";
        return behind.Fit.Usable ? $"Behind {ahead.Part.PartNumber}: {why}." : $"Out: {why}.";
    }

    private static string Coming(BlankOption option) => option.NextReceipt is { } on
        ? $"more are expected on {on.ToString("MMM d, yyyy", CultureInfo.InvariantCulture)}"
        : $"none are on order, {option.Part.LeadTimeDays} days to get it";

    private static double Steps(double valueIn, double stepIn) => double.IsFinite(valueIn) ? Math.Round(valueIn / stepIn) : valueIn;

    private static string In(double value) => value.ToString("0.000", CultureInfo.InvariantCulture) + " in";

    private static string Small(string sentence) => sentence.Length == 0 ? sentence : char.ToLowerInvariant(sentence[0]) + sentence[1..];
}
