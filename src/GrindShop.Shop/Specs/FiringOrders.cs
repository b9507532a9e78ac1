using System.Globalization;

namespace GrindShop.Shop.Specs;

/// <summary>Firing orders as people write them: cylinder numbers with dashes, commas or blanks between.</summary>
public static class FiringOrders
{
    /// <summary>The cylinders in firing order, or null where the text is none.</summary>
    public static int[]? Parse(string text)
    {
        var parts = text.Split(['-', ',', ' ', '/'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var order = new int[parts.Length];
        for (var i = 0; i < parts.Length; i++)
            if (!int.TryParse(parts[i], NumberStyles.None, CultureInfo.InvariantCulture, out order[i]))
                return null;
        return order;
    }

    public static bool IsValid(string text, int cylinders) =>
        Parse(text) is { } order && order.Length == cylinders && order.Order().SequenceEqual(Enumerable.Range(1, cylinders));

    /// <summary>The same firing sequence, wherever it starts.</summary>
    public static bool Same(string one, string other)
    {
        if (Parse(one) is not { } a || Parse(other) is not { } b || a.Length != b.Length || a.Length == 0)
            return false;
        var shift = Array.IndexOf(b, a[0]);
        return shift >= 0 && a.Select((cylinder, i) => cylinder == b[(i + shift) % b.Length]).All(same => same);
    }
}
