namespace GrindShop.Lobes;

/// <summary>Argument checks of the public factories; NaN and infinities never pass.</summary>
internal static class Require
{
    /// <summary>Longest length any public factory accepts, in.</summary>
    public const double LargestLengthIn = 100;

    public static double Within(double value, double least, double most, string argument) =>
        value >= least && value <= most
            ? value
            : throw new ArgumentOutOfRangeException(argument, value, $"{argument} must lie between {least} and {most}.");

    /// <summary>A length above zero, in.</summary>
    public static double Length(double value, string argument) => Within(value, 1e-6, LargestLengthIn, argument);

    /// <summary>A length that may be zero, in.</summary>
    public static double LengthOrZero(double value, string argument) => Within(value, 0, LargestLengthIn, argument);

    public static double Angle(double value, string argument) => Within(value, -1e6, 1e6, argument);
}
