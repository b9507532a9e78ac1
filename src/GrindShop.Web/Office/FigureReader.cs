using GrindShop.Shop;
using GrindShop.Web.Public;

namespace GrindShop.Web.Office;

/// <summary>Reads figures as people type them and keeps what was wrong with the first that cannot be read.</summary>
public sealed class FigureReader
{
    public Refusal? Refusal { get; private set; }

    public double Number(string? text, string what)
    {
        if (NumberText.TryRead(text?.Replace("$", "", StringComparison.Ordinal).Replace("%", "", StringComparison.Ordinal), out var value) && value is { } number)
            return number;
        Refusal ??= new Refusal("badNumber", $"The {what} is not a number: \"{text}\". Type a figure such as 12 or 1.5.");
        return 0;
    }

    /// <summary>Typed in percent.</summary>
    public double Share(string? text, string what) => Number(text, what) / 100;

    public decimal Amount(string? text, string what) => Math.Round((decimal)Number(text, what), 2, MidpointRounding.AwayFromZero);

    public int Count(string? text, string what)
    {
        var number = Number(text, what);
        if (number != Math.Floor(number) || Math.Abs(number) > 1e6)
            Refusal ??= new Refusal("badNumber", $"The {what} must be a whole number.");
        return (int)Math.Clamp(number, -1e6, 1e6);
    }
}
