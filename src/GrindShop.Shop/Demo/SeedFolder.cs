using System.Text.Json;
using System.Text.Json.Serialization;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.Demo;

/// <summary>The folder of a scenario: reads its JSON and CSV files and gathers what is wrong with them.</summary>
internal sealed class SeedFolder(string path)
{
    private static readonly JsonSerializerOptions Strict = new(ShopJson.Options)
    {
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
    };

    public List<RowProblem> Problems { get; } = [];

    /// <summary>The entries of a JSON list; empty where the file cannot be read.</summary>
    public IReadOnlyList<T> List<T>(string file) => Value<List<T>>(file) ?? [];

    /// <summary>The value of a whole JSON file; null where it cannot be read.</summary>
    public T? Value<T>(string file)
        where T : class
    {
        if (Text(file) is not { } text)
            return null;
        try
        {
            return JsonSerializer.Deserialize<T>(text, Strict);
        }
        catch (JsonException error)
        {
            Wrong(file, error.LineNumber is { } line ? $"line {line + 1}" : "file", error.Path ?? "$", error.Message);
            return null;
        }
    }

    public IReadOnlyList<CsvRow> Rows(string file)
    {
        var records = CsvText.Records(Text(file) ?? "").ToList();
        return [.. records.Skip(1).Select(record => new CsvRow(file, record.Line, Cells(file, records[0].Cells, record), Problems))];
    }

    public void Wrong(string file, string row, string field, string message) => Problems.Add(new RowProblem(file, row, field, message));

    private string? Text(string file)
    {
        try
        {
            return File.ReadAllText(Path.Combine(path, file));
        }
        catch (IOException error)
        {
            Wrong(file, "file", "all", error.Message);
            return null;
        }
    }

    private Dictionary<string, string> Cells(string file, IReadOnlyList<string> header, (int Line, IReadOnlyList<string> Cells) record)
    {
        if (record.Cells.Count != header.Count)
            Wrong(file, $"line {record.Line}", "all", $"The row has {record.Cells.Count} cells, the header {header.Count}.");
        return header.Zip(record.Cells).DistinctBy(cell => cell.First).ToDictionary(cell => cell.First.Trim(), cell => cell.Second);
    }
}
