using System.Globalization;

namespace GrindShop.Papers;

/// <summary>How numbers and dates are written on paper, whatever the machine's language.</summary>
internal static class Figures
{
    /// <summary>Lobe and valve lifts carry one more place than the rest.</summary>
    public static string Lift(double lengthIn) => lengthIn.ToString("0.0000", CultureInfo.InvariantCulture);

    public static string In(double lengthIn) => lengthIn.ToString("0.000", CultureInfo.InvariantCulture);

    /// <summary>A length that may be missing.</summary>
    public static string In(double? lengthIn, string otherwise = "–") => lengthIn is { } known ? In(known) : otherwise;

    public static string Deg(double degrees) => degrees.ToString("0.0#", CultureInfo.InvariantCulture);

    public static string SignedDeg(double degrees) => degrees.ToString("+0.0#;-0.0#;0.0", CultureInfo.InvariantCulture);

    public static string Angle(double degrees) => degrees.ToString("0.00", CultureInfo.InvariantCulture);

    public static string Hardness(double hrc) => hrc.ToString("0.#", CultureInfo.InvariantCulture);

    public static string Ratio(double ratio) => ratio.ToString("0.0##", CultureInfo.InvariantCulture);

    /// <summary>A check lift as the trade says it: .050.</summary>
    public static string CheckLift(double lengthIn) => lengthIn.ToString(".000#", CultureInfo.InvariantCulture);

    public static string Day(DateOnly day) => day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    public static string Day(DateTime day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    public static string Moment(DateTime moment) => moment.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    public static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
