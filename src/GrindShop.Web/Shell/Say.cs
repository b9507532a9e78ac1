using System.Globalization;
using System.Text.RegularExpressions;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;

namespace GrindShop.Web.Shell;

/// <summary>How ages, dates, figures and specifications are said on the pages of the shop.</summary>
public static partial class Say
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>How long ago, in the largest unit that still tells something.</summary>
    public static string Age(DateTimeOffset at, DateTimeOffset now) => (now - at) switch
    {
        { TotalMinutes: < 1 } => "just now",
        { TotalHours: < 1 } age => $"{(int)age.TotalMinutes} min",
        { TotalDays: < 1 } age => $"{(int)age.TotalHours} h",
        { TotalDays: < 14 } age => Count((int)age.TotalDays, "day"),
        { TotalDays: < 70 } age => Count((int)(age.TotalDays / 7), "week"),
        var age => Count((int)(age.TotalDays / 30.4), "month"),
    };

    public static string Ago(DateTimeOffset at, DateTimeOffset now) => Age(at, now) is var age && now - at < TimeSpan.FromMinutes(1) ? age : $"{age} ago";

    public static string Day(DateOnly day) => day.ToString("ddd MMM d, yyyy", Plain);

    /// <summary>A moment by the clock on the shop's wall.</summary>
    public static string Moment(DateTimeOffset at, ShopSettings shop) => shop.ShopTime(at).ToString("ddd MMM d, yyyy HH:mm", Plain);

    /// <summary>A moment in a narrow column, without the year.</summary>
    public static string Brief(DateTimeOffset at, ShopSettings shop) => shop.ShopTime(at).ToString("ddd MMM d, HH:mm", Plain);

    public static string Due(DateOnly due, DateOnly today) => (due.DayNumber - today.DayNumber) switch
    {
        < 0 and var days => $"{Count(-days, "day")} late",
        0 => "due today",
        1 => "due tomorrow",
        var days => $"due in {days} days",
    };

    public static string Count(int count, string thing) => $"{count} {thing}{(count == 1 ? "" : "s")}";

    /// <summary>A choice as a file spells it, such as pressedIron, in words.</summary>
    public static string Spaced(string choice) => WordEnds().Replace(choice, " ").ToLowerInvariant();

    public static string In(double? value) => value is { } known ? known.ToString("0.000", Plain) + " in" : "not known";

    public static string CamDeg(double value) => value.ToString("0.##", Plain) + " cam deg";

    public static string CrankDeg(double value) => value.ToString("0.##", Plain) + " crank deg";

    public static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>The state in a narrow column.</summary>
    public static string Short(this OrderState state) => state.Words().Split(',')[0];

    /// <summary>A cam in a few words: what is done to it where that is no new grind, engine, lifter.</summary>
    public static string Cam(WorkKind kind, CamSpec spec) => string.Join(", ", new[]
    {
        kind == WorkKind.NewGrind ? null : Capital(kind.Words()),
        spec.EngineFamily ?? "engine not named",
        kind == WorkKind.GearReplacement ? null : spec.Lifter?.Words() ?? "lifter not named",
    }.OfType<string>());

    /// <summary>What the shop answered to a cam so far; a cam that came in is not judged on the shop's blanks.</summary>
    public static string Answered(WorkKind kind, Verdict? verdict) => (kind, verdict) switch
    {
        (WorkKind.NewGrind, _) => verdict.Words(),
        (WorkKind.GearReplacement, _) => "no grind",
        (_, null) => "not measured",
        (_, Verdict.NotGrindable) => "metal too small",
        _ => "metal is there",
    };

    public static string Words(this Verdict? verdict) => verdict switch
    {
        Verdict.FromStock => "from stock",
        Verdict.SpecialOrder => "special order",
        Verdict.NotGrindable => "cannot be ground",
        _ => "incomplete",
    };

    [GeneratedRegex("(?<=[a-z])(?=[A-Z0-9])")]
    private static partial Regex WordEnds();
}
