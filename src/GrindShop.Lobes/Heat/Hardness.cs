using System.Globalization;

namespace GrindShop.Lobes;

/// <summary>Rockwell C, Vickers, and Brinell with the tungsten-carbide ball (10/3000).</summary>
public enum HardnessScale
{
    Hrc,
    Hv,
    Hbw,
}

/// <summary>A hardness on a scale.</summary>
/// <param name="Value">The figure.</param>
/// <param name="Scale">Its scale.</param>
/// <param name="BeyondBrinell">Above 58 HRC a Brinell figure is outside the scale's normal range: do not rely on it.</param>
public readonly record struct HardnessReading(double Value, HardnessScale Scale, bool BeyondBrinell = false)
{
    /// <summary>Can a cam read so, whether or not it can be converted?</summary>
    public bool CanBe => Value > 0 && Value <= Hardness.Most(Scale);

    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Value:0.#} {Scale.ToString().ToUpperInvariant()}");
}

/// <summary>A hardness outside the table of conversions.</summary>
/// <param name="Given">What was to be converted.</param>
/// <param name="Least">Least figure of that scale in the table.</param>
/// <param name="Most">Greatest figure of that scale in the table.</param>
public sealed record HardnessOutsideTable(HardnessReading Given, double Least, double Most)
{
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Given} cannot be converted: the table runs from {Least} to {Most} {Given.Scale.ToString().ToUpperInvariant()}.");
}

/// <summary>
/// Conversion between hardness scales by rows of ASTM E140 for non-austenitic steels, straight lines between the rows
/// (within 2 HV of the full table). Conversions are approximate: compare like with like where it can be had.
/// </summary>
public static class Hardness
{
    public const double BrinellNormalToHrc = 58;

    /// <summary>
    /// Greater than any cam reads on this scale, far beyond the table (Rockwell C is used to 70, from memory; the others are common practice,
    /// no source): tells a figure on the wrong scale, not a hard blank.
    /// </summary>
    public static double Most(HardnessScale scale) => scale switch
    {
        HardnessScale.Hrc => 70,
        HardnessScale.Hv => 1_500,
        HardnessScale.Hbw => 800,
        _ => throw new ArgumentOutOfRangeException(nameof(scale), scale, "No scale."),
    };

    private static readonly double[][] Rows =
    [
        // HRC 20 to 62, HV, HBW
        [20, 25, 30, 35, 40, 45, 48, 50, 52, 55, 58, 60, 62],
        [238, 266, 302, 345, 392, 446, 484, 513, 544, 595, 653, 697, 746],
        [226, 253, 286, 327, 371, 421, 455, 481, 512, 560, 615, 654, 688],
    ];

    /// <summary>The same hardness on another scale.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="value"/> is outside 0-3000, or a scale is none of the three.
    /// </exception>
    public static Outcome<HardnessReading, HardnessOutsideTable> Convert(double value, HardnessScale from, HardnessScale to)
    {
        Require.Within(value, 0, 3_000);
        var (given, asked) = (Column(from), Column(to));
        if (value < given[0] || value > given[^1])
            return new HardnessOutsideTable(new(value, from), given[0], given[^1]);
        var beyond = (from == HardnessScale.Hbw || to == HardnessScale.Hbw)
            && Between(value, given, Column(HardnessScale.Hrc)) > BrinellNormalToHrc;
        return new HardnessReading(Between(value, given, asked), to, beyond);
    }

    private static double[] Column(HardnessScale scale) => Rows[Require.Within((int)scale, 0, Rows.Length - 1, nameof(scale))];

    // Both columns rise strictly, so the broken line rises too and is its own way back.
    private static double Between(double value, double[] from, double[] to)
    {
        var upper = Math.Max(1, Array.FindIndex(from, figure => figure >= value));
        var share = (value - from[upper - 1]) / (from[upper] - from[upper - 1]);
        return to[upper - 1] + share * (to[upper] - to[upper - 1]);
    }
}
