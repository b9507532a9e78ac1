using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.BlankCatalog;

/// <summary>The parts of the rows that are right, and what is wrong with the others.</summary>
internal sealed class ImportFile
{
    private const string Name = "file";

    public List<(int Line, BlankPart Part)> Parts { get; } = [];

    public List<RowProblem> Problems { get; } = [];

    public static ImportFile Read(string text, CatalogState state)
    {
        var file = new ImportFile();
        var separator = CsvText.Separator(text);
        var records = CsvText.Records(text, separator).Take(CatalogImport.MostRows + 2).ToList();
        if (records.Count == 0)
            file.Wrong(1, "all", "The file is empty. Export the catalog to see how one looks.");
        else if (records.Count > CatalogImport.MostRows + 1)
            file.Wrong(1, "all", $"The file has more than {CatalogImport.MostRows} rows. Import it in parts.");
        else if (file.Header(records[0].Cells) is { } header)
            file.Rows(header, records.Skip(1), separator == ';', state);
        return file;
    }

    /// <summary>The names of the columns; null where one is missing, unknown or comes twice.</summary>
    private List<string>? Header(IReadOnlyList<string> cells)
    {
        var header = cells.Select(cell => cell.Trim()).ToList();
        foreach (var column in BlankColumns.All.Where(column => !header.Contains(column.Name)))
            Wrong(1, column.Name, "This column is missing.");
        foreach (var cell in header.Where(cell => BlankColumns.All.All(column => column.Name != cell)))
            Wrong(1, cell, "This column is not known.");
        foreach (var twice in header.CountBy(cell => cell).Where(count => count.Value > 1))
            Wrong(1, twice.Key, "This column comes twice.");
        return Problems.Count == 0 ? header : null;
    }

    private void Rows(List<string> header, IEnumerable<(int Line, IReadOnlyList<string> Cells)> records, bool decimalComma, CatalogState state)
    {
        var rows = new List<(CsvRow Row, int Line, BlankPart Part)>();
        var lines = new Dictionary<string, int>();
        foreach (var (line, cells) in records)
        {
            if (cells.Count != header.Count)
            {
                Wrong(line, "all", $"The row has {cells.Count} cells, the header {header.Count}.");
                continue;
            }
            var row = new CsvRow(Name, line, header.Zip(cells).ToDictionary(cell => cell.First, cell => cell.Second), Problems, decimalComma);
            if (BlankRow.Read(row, state.Families, state.Vendors, state.Parts) is not { } part)
                continue;
            if (!lines.TryAdd(part.PartNumber, line))
                row.Wrong("partNumber", $"{part.PartNumber} stands in line {lines[part.PartNumber]} already.");
            else
                rows.Add((row, line, part));
        }
        Keep(rows, state);
    }

    private void Keep(List<(CsvRow Row, int Line, BlankPart Part)> rows, CatalogState state)
    {
        var all = state.Parts.ToDictionary();
        foreach (var (_, _, part) in rows)
            all[part.PartNumber] = part;
        foreach (var (row, _, part) in rows)
            PartLinks.Check(row, part, all);
        var wrong = Problems.Select(problem => problem.Row).ToHashSet();
        Parts.AddRange(rows.Where(read => !wrong.Contains(read.Row.Name)).Select(read => (read.Line, read.Part)));
    }

    private void Wrong(int line, string column, string message) => Problems.Add(new RowProblem(Name, $"line {line}", column, message));
}
