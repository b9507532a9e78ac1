namespace GrindShop.Papers;

/// <summary>A labelled value in a band of such values.</summary>
internal sealed record Field(string Label, string? Value, double Width)
{
    private const double SizePt = 9.5, Gap = 8;

    /// <summary>Draws fields side by side, values in at most two lines; answers the y below.</summary>
    public static double Band(Sheet sheet, double y, params Field[] fields)
    {
        var (x, last) = (Sheet.Left, y);
        sheet.Rule(Sheet.Left, y, Sheet.Width);
        foreach (var field in fields)
        {
            sheet.Text(x, y + 9, field.Label, Weight.Regular, 7);
            last = Math.Max(last, sheet.Lines(x, y + 19.5, field.Width - Gap, string.IsNullOrWhiteSpace(field.Value) ? "–" : field.Value, Weight.SemiBold, SizePt, mostLines: 2, leading: 1.15));
            x += field.Width;
        }
        return last - 4;
    }
}
