using System.Text.RegularExpressions;

namespace GrindShop.Shop.Tests.Feasibility;

/// <summary>What the shop's own people read at a glance and a customer may not: short names of figures, scales without a word, lists instead of sentences.</summary>
internal static partial class Shorthand
{
    public static void None(string text) => Assert.False(Pattern().IsMatch(text), $"\"{Pattern().Match(text).Value}\" is shorthand: {text}");

    [GeneratedRegex(@"\b(LSA|ICL|ECL|IVO|IVC|EVO|EVC|HRC|TIR|BC|IGB|ADI|CL|TDC|ABDC|BTDC|ATDC|BBDC|CNC|OD|QTY|NULL|NaN|Infinity)\b|@\s*\.\d|heat-treat vendor|finish grind\b|rough grind\b", RegexOptions.IgnoreCase)]
    private static partial Regex Pattern();
}
