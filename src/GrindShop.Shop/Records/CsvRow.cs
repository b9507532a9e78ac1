using System.Globalization;

namespace GrindShop.Shop.Records;

/// <summary>One row of a CSV file, read by column name. What cannot be read is noted as a problem and stands in as a blank.</summary>
public sealed class CsvRow(string file, int line, IReadOnlyDictionary<string, string> cells, List<RowProblem> problems, bool decimalComma = false)
{
    public string Name { get; } = $"line {line}";

    /// <summary>The trimmed cell; null where it is blank.</summary>
    public string? Maybe(string column)
    {
        if (!cells.TryGetValue(column, out var cell))
            Wrong(column, "The column is missing.");
        return string.IsNullOrWhiteSpace(cell) ? null : CsvText.Plain(cell.Trim());
    }

    public string Text(string column) => Maybe(column) ?? Blank(column);

    public double? MaybeNumber(string column) => Maybe(column) is { } text ? Parse(column, text) : null;

    public double Number(string column) => Parse(column, Text(column));

    public int? MaybeWhole(string column) => MaybeNumber(column) is { } number ? Whole(column, number) : null;

    public int Whole(string column) => Whole(column, Number(column));

    public decimal Money(string column)
    {
        var text = Text(column);
        if (decimal.TryParse(Figure(text), NumberStyles.Float, CultureInfo.InvariantCulture, out var money))
            return money;
        if (text != "")
            Wrong(column, $"\"{Short(text)}\" is no amount of money.");
        return 0;
    }

    public T? MaybeChoice<T>(string column)
        where T : struct, Enum => Maybe(column) is { } text ? Choose<T>(column, text) : null;

    public T Choice<T>(string column)
        where T : struct, Enum => Choose<T>(column, Text(column));

    /// <summary>The entry that the cell names by its key.</summary>
    public T? Known<T>(string column, IReadOnlyDictionary<string, T> all)
        where T : class
    {
        if (Maybe(column) is not { } key)
            return null;
        if (!all.TryGetValue(key, out var found))
            Wrong(column, $"\"{Short(key)}\" is not known.");
        return found;
    }

    public void Wrong(string column, string message) => problems.Add(new RowProblem(file, Name, column, message));

    /// <summary>A figure as the file writes its decimals, with a point.</summary>
    public string Figure(string text) => decimalComma ? text.Replace(',', '.') : text;

    /// <summary>Enough of a cell to find it by.</summary>
    public static string Short(string text) => text.Length > 60 ? $"{text[..60]}…" : text;

    private string Blank(string column)
    {
        if (cells.ContainsKey(column))
            Wrong(column, "A value is needed.");
        return "";
    }

    private double Parse(string column, string text)
    {
        if (double.TryParse(Figure(text), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number))
            return number;
        if (text != "")
            Wrong(column, $"\"{Short(text)}\" is not a number.");
        return 0;
    }

    private int Whole(string column, double number)
    {
        if (number != Math.Floor(number) || Math.Abs(number) > 1e6)
            Wrong(column, "A whole number is needed.");
        return (int)Math.Clamp(number, -1e6, 1e6);
    }

    private T Choose<T>(string column, string text)
        where T : struct, Enum
    {
        if (text != "" && char.IsLetter(text[0]) && Enum.TryParse<T>(text, ignoreCase: true, out var choice) && Enum.IsDefined(choice))
            return choice;
        if (text != "")
            Wrong(column, $"\"{Short(text)}\" is none of {string.Join(", ", Enum.GetNames<T>().Select(name => char.ToLowerInvariant(name[0]) + name[1..]))}.");
        return default;
    }
}
