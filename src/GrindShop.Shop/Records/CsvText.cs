using System.Text;

namespace GrindShop.Shop.Records;

/// <summary>CSV text (RFC 4180: double quotes, quotes doubled inside quotes), read with commas or, from spreadsheets of some countries, semicolons.</summary>
public static class CsvText
{
    /// <summary>A spreadsheet takes a cell that starts so for a formula.</summary>
    private const string FormulaStarts = "=+-@\t\r";

    /// <summary>Each record with the number of the line it starts on, from 1; blank lines are left out.</summary>
    public static IEnumerable<(int Line, IReadOnlyList<string> Cells)> Records(string text, char separator = ',')
    {
        var (cells, cell, quoted, line, start) = (new List<string>(), new StringBuilder(), false, 1, 1);
        for (var i = 0; i < text.Length; i++)
        {
            var letter = text[i];
            if (letter == '"' && quoted && i + 1 < text.Length && text[i + 1] == '"')
                cell.Append(text[++i]);
            else if (letter == '"')
                quoted = !quoted;
            else if (letter == separator && !quoted)
                EndCell(cells, cell);
            else if (letter == '\n' && !quoted)
            {
                EndCell(cells, cell);
                if (!IsBlank(cells))
                    yield return (start, cells);
                (cells, start) = ([], line + 1);
            }
            else if (letter != '\r' || quoted)
                cell.Append(letter);
            if (letter == '\n')
                line++;
        }
        EndCell(cells, cell);
        if (!IsBlank(cells))
            yield return (start, cells);
    }

    /// <summary>The separator of a text, by its first line.</summary>
    public static char Separator(string text)
    {
        var header = text.AsSpan()[..(text.IndexOf('\n', StringComparison.Ordinal) is >= 0 and var end ? end : text.Length)];
        return header.Count(';') > header.Count(',') ? ';' : ',';
    }

    /// <summary>One record with its line end; cells that need it are quoted.</summary>
    public static string Record(IEnumerable<string> cells) => string.Join(',', cells.Select(Quoted)) + "\r\n";

    /// <summary>Text that no spreadsheet takes for a formula; <see cref="Plain"/> takes the guard off again.</summary>
    public static string Guarded(string text) => NeedsGuard(text) ? "'" + text : text;

    public static string Plain(string cell) => cell.StartsWith('\'') && NeedsGuard(cell[1..]) ? cell[1..] : cell;

    private static bool NeedsGuard(string text) => text.AsSpan().TrimStart('\'') is [var first, ..] && FormulaStarts.Contains(first);

    private static string Quoted(string cell) =>
        cell.AsSpan().IndexOfAny(",\";\r\n") >= 0 || cell.Trim() != cell ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;

    private static void EndCell(List<string> cells, StringBuilder cell)
    {
        cells.Add(cell.ToString());
        cell.Clear();
    }

    private static bool IsBlank(List<string> cells) => cells is [""];
}
