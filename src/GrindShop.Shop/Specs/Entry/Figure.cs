namespace GrindShop.Shop.Specs.Entry;

/// <summary>A number with its unit: lengths in inches, angles in degrees, as far as the unit tells.</summary>
/// <param name="Value">The number, millimetres and thousandths made inches.</param>
/// <param name="IsWhole">Written without a point and without a unit of length: 355 may stand for .355.</param>
/// <param name="Next">The token behind it.</param>
internal readonly record struct Figure(double Value, bool IsWhole, int Next)
{
    private const double MillimetresPerInch = 25.4;

    /// <summary>The figure as a length, in: whole numbers are thousandths.</summary>
    public double LengthIn => IsWhole && Value >= 1 ? Math.Round(Value / 1000, 4) : Value;

    public bool Within(double least, double most) => Value >= least && Value <= most;

    public static Figure? At(EntryText text, int at)
    {
        var number = text[at];
        if (!number.IsNumber || Foreign(text, at))
            return null;
        return text[at + 1] switch
        {
            { Text: "mm", OpensLine: false } => new Figure(Math.Round(number.Value / MillimetresPerInch, 4), false, at + 2),
            var unit when EntryWords.Thousandth.Contains(unit.Text ?? "") => new Figure(Math.Round(number.Value / 1000, 4), false, at + 2),
            _ => new Figure(number.Value, number.IsWhole, BehindUnit(text, at)),
        };
    }

    /// <summary>Money, part numbers, horsepower: a figure, but none of the cam's.</summary>
    private static bool Foreign(EntryText text, int at)
    {
        var (before, after) = (text[at - 1], text[at + 1]);
        return (before.Text is "$" or "#" or "€" or "£")
            || (before.IsWord && !text[at].Spaced && !EntryWords.Known.Contains(before.Text))
            || (after.IsWord && !after.Spaced && !EntryWords.Known.Contains(after.Text))
            || (after.Kind == TokenKind.Mark && !after.Spaced && after.Text is "%" or "½" or "$")
            || (text.Is(at + 1, EntryWords.Foreign) && !after.OpensLine);
    }

    private static int BehindUnit(EntryText text, int at)
    {
        if (text[at + 1] is { Text: "crank" or "cam" } && text.Is(at + 2, EntryWords.Degree))
            return at + 3;
        if (text.Is(at + 1, EntryWords.Degree))
            return at + 2;
        return IsInch(text, at) ? at + 2 : at + 1;
    }

    /// <summary>"in" is inch behind a small decimal, but "in at 108" is where the cam goes in, and ".355 in .360 ex" is the intake.</summary>
    private static bool IsInch(EntryText text, int at) =>
        text.Is(at + 1, EntryWords.Inch) && text[at] is { HasPoint: true, Value: < 3 }
        && !(text.Is(at + 1, "in") && (text[at + 2] is { Text: "at" or "@" or "on" } || Pair.IsIntakeIn(text, at + 1)));
}
