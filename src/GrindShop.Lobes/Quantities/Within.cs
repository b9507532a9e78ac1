using System.Globalization;
using System.Runtime.CompilerServices;

namespace GrindShop.Lobes;

/// <summary>Range checks of public arguments. NaN and the infinities are always outside.</summary>
public static class Within
{
    /// <summary>
    /// Returns <paramref name="value"/> when it lies from <paramref name="least"/> to <paramref name="most"/>, both included.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Names the argument and the allowed range.</exception>
    public static double Range(
        double value, double least, double most, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value >= least && value <= most
            ? value
            : throw Outside(name, value, Message(least, most));

    /// <inheritdoc cref="Range(double, double, double, string?)"/>
    public static int Range(
        int value, int least, int most, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value >= least && value <= most
            ? value
            : throw Outside(name, value, Message(least, most));

    // "bank.LifterAxisClockwiseDeg" reads LifterAxisClockwiseDeg: the field that the caller filled in.
    private static ArgumentOutOfRangeException Outside(string? name, object value, string message) =>
        new(name?.Split('.')[^1], value, message);

    private static string Message(double least, double most) =>
        string.Create(CultureInfo.InvariantCulture, $"Must be from {least:0.######} to {most:0.######}.");
}
