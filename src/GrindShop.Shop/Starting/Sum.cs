namespace GrindShop.Shop.Starting;

/// <summary>A figure as it grows, step by step, each step with its reason. A step that changes nothing is not mentioned.</summary>
internal sealed record Sum(double Value, IReadOnlyList<string> Reasons)
{
    public Sum(double value, string reason)
        : this(value, [reason])
    {
    }

    public Sum Add(double by, Func<double, string> words, string reason) =>
        Math.Abs(by) < .05 ? this with { Value = Value + by } : new Sum(Value + by, [.. Reasons, $"{words(by)} {reason}"]);

    public Sum Times(double share, string reason) => new(Value * share, [.. Reasons, reason]);

    public Sum AtMost(double most, Func<double, string> reason) => Value <= most ? this : new Sum(most, [.. Reasons, reason(most)]);

    /// <summary>To the nearest step, without the tail of a binary fraction.</summary>
    public Sum Round(double step) => this with { Value = Math.Round(Math.Round(Value / step) * step, 6) };

    public Sum Between(double least, double most) => Value >= least && Value <= most
        ? this
        : new Sum(Math.Clamp(Value, least, most), [.. Reasons, FormattableString.Invariant($"kept between {least:0.###} and {most:0.###}")]);
}
