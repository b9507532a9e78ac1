namespace GrindShop.Papers;

/// <summary>A column: its head (with the unit), its width in points, and where in it the text stands.</summary>
/// <param name="PointAt">For <see cref="Align.Decimal"/>: the place of the decimal point from the column's left.</param>
internal sealed record Column(string Head, double Width, Align Align = Align.Left, double PointAt = 0);

/// <summary>Rows of one line each under a head, ruled lightly.</summary>
internal sealed class Table(double rowHeight, double sizePt, params Column[] columns)
{
    private const double HeadSizePt = 7;

    public double Width => columns.Sum(column => column.Width);

    /// <summary>Draws head and rows; answers the y below the last row.</summary>
    public double Draw(Sheet sheet, double x, double y, IEnumerable<string[]> rows)
    {
        if (columns.Any(column => column.Head.Length > 0))
            y = Head(sheet, x, y);
        foreach (var row in rows)
            y = Row(sheet, x, y, row);
        return y;
    }

    private double Head(Sheet sheet, double x, double y)
    {
        var left = x;
        foreach (var column in columns)
        {
            sheet.Text(left + Anchor(column), y + HeadSizePt + 1, column.Head, Weight.Regular, HeadSizePt, AlignOf(column, column.Head));
            left += column.Width;
        }
        sheet.Rule(x, y + HeadSizePt + 4.5, Width);
        return y + HeadSizePt + 5;
    }

    private double Row(Sheet sheet, double x, double y, string[] cells)
    {
        var (left, baseline) = (x, y + rowHeight - (rowHeight - sizePt) / 2 - sizePt * .15);
        foreach (var (column, cell) in columns.Zip(cells))
        {
            sheet.Text(left + Anchor(column), baseline, cell, Weight.Regular, sizePt, AlignOf(column, cell), column.Width - 2);
            left += column.Width;
        }
        sheet.Hairline(x, y + rowHeight, Width);
        return y + rowHeight;
    }

    /// <summary>Words in a column of numbers stand over the decimal point.</summary>
    private static Align AlignOf(Column column, string cell) =>
        column.Align == Align.Decimal && !cell.Any(char.IsAsciiDigit) ? Align.Centre : column.Align;

    private static double Anchor(Column column) => column.Align switch
    {
        Align.Left => 0,
        Align.Right => column.Width - 2,
        Align.Centre => column.Width / 2,
        _ => column.PointAt,
    };
}
