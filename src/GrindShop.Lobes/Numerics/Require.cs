using System.Globalization;
using System.Runtime.CompilerServices;

namespace GrindShop.Lobes;

/// <summary>Argument checks of the public factories; NaN and infinities never pass.</summary>
internal static class Require
{
    /// <summary>Longest length any public factory accepts, in.</summary>
    public const double LargestLengthIn = 100;

    /// <summary>The value when it lies from <paramref name="least"/> to <paramref name="most"/>, both included.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Names the argument, for a property of one the property, and the range.</exception>
    public static double Within(
        double value, double least, double most, [CallerArgumentExpression(nameof(value))] string argument = "") =>
        value >= least && value <= most ? value : throw Outside(argument, value, least, most);

    /// <inheritdoc cref="Within(double, double, double, string)"/>
    public static int Within(
        int value, int least, int most, [CallerArgumentExpression(nameof(value))] string argument = "") =>
        value >= least && value <= most ? value : throw Outside(argument, value, least, most);

    /// <summary>A length above zero, in.</summary>
    public static double Length(double value, string argument) => Within(value, 1e-6, LargestLengthIn, argument);

    /// <summary>A length that may be zero, in.</summary>
    public static double LengthOrZero(double value, string argument) => Within(value, 0, LargestLengthIn, argument);

    public static double Angle(double value, string argument) => Within(value, -1e6, 1e6, argument);

    // "bank.LifterAxisClockwiseDeg" reads LifterAxisClockwiseDeg: the field that the caller filled in.
    private static ArgumentOutOfRangeException Outside(string argument, object value, double least, double most)
    {
        var field = argument.Split('.')[^1];
        return new(field, value, string.Create(CultureInfo.InvariantCulture, $"{field} must lie between {least} and {most}."));
    }
}
