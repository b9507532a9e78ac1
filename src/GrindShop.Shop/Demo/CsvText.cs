using System.Text;

namespace GrindShop.Shop.Demo;

/// <summary>Splits CSV text (RFC 4180: commas, double quotes, quotes doubled inside quotes) into records.</summary>
public static class CsvText
{
    /// <summary>Each record with the number of the line it starts on, from 1; blank lines are left out.</summary>
    public static IEnumerable<(int Line, IReadOnlyList<string> Cells)> Records(string text)
    {
        var (cells, cell, quoted, line, start) = (new List<string>(), new StringBuilder(), false, 1, 1);
        for (var i = 0; i < text.Length; i++)
        {
            var letter = text[i];
            if (letter == '"' && quoted && i + 1 < text.Length && text[i + 1] == '"')
                cell.Append(text[++i]);
            else if (letter == '"')
                quoted = !quoted;
            else if (letter == ',' && !quoted)
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

    private static void EndCell(List<string> cells, StringBuilder cell)
    {
        cells.Add(cell.ToString());
        cell.Clear();
    }

    private static bool IsBlank(List<string> cells) => cells is [""];
}
