using System.Collections.Immutable;
using System.Globalization;

namespace GrindShop.Lobes;

/// <summary>One lobe of a table file.</summary>
public sealed record LobeTable(string Name, ImmutableArray<TablePoint> Points);

/// <summary>A row of a file that could not be used.</summary>
/// <param name="Line">Line number, from 1.</param>
/// <param name="Message">What is wrong with it.</param>
public sealed record BrokenRow(int Line, string Message);

/// <summary>What a table file held: its lobes, and the rows that were broken.</summary>
public sealed record LobeTableFile(ImmutableArray<LobeTable> Lobes, ImmutableArray<BrokenRow> Broken);

/// <summary>
/// Reads lobe tables: cam degree, then the lift of one or more lobes; comma, semicolon (then decimal commas may occur) or tab; a header
/// is optional and may say mm; empty lines and lines starting with # are skipped.
/// </summary>
public static class LobeTableCsv
{
    private const int MostLobes = 64, MostLines = 100_000;

    /// <param name="text">The file.</param>
    /// <param name="unit">Unit of the lifts; null takes mm when the header says so, inches otherwise.</param>
    public static LobeTableFile Read(string text, LengthUnit? unit = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        var lines = Lines(text);
        if (lines.Count == 0)
            return new([], [new(1, "The file is empty.")]);
        var separator = Separator(lines[0].Text);
        var header = Header(lines[0].Text, separator);
        var lifts = unit ?? (lines[0].Text.Contains("mm", StringComparison.OrdinalIgnoreCase) && header is not null ? LengthUnit.Millimetre : LengthUnit.Inch);
        var reader = new LobeTableRows(separator, Math.Min(MostLobes, lines[0].Text.Split(separator).Length - 1), lifts);
        foreach (var (line, row) in lines.Skip(header is null ? 0 : 1))
            reader.Add(line, row);
        return reader.Finish(header);
    }

    private static List<(int Line, string Text)> Lines(string text) =>
        [.. text.Split('\n').Take(MostLines).Select((line, i) => (i + 1, line.Trim().TrimStart('\uFEFF')))
            .Where(line => line.Item2.Length > 0 && line.Item2[0] != '#')];

    private static char Separator(string line) => line.Contains(';') ? ';' : line.Contains('\t') ? '\t' : ',';

    private static string[]? Header(string line, char separator)
    {
        var cells = line.Split(separator).Select(cell => cell.Trim().Trim('"')).ToArray();
        return cells.All(cell => Number(cell, separator) is null) ? cells : null;
    }

    internal static double? Number(string cell, char separator)
    {
        var plain = cell.Trim().Trim('"');
        if (separator != ',')
            plain = plain.Replace(',', '.');
        return double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value : null;
    }
}
