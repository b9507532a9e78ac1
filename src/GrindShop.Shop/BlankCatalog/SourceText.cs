using System.Globalization;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.BlankCatalog;

/// <summary>
/// The further suppliers of a part in one cell: supplier | its part number | cost, USD | lead time, days | least quantity; semicolons between two suppliers.
/// </summary>
public static class SourceText
{
    public const string Column = "otherSources";

    public static string Write(IEnumerable<BlankSource> sources) => Join(sources.Select(source =>
        new SourceCells(source.Supplier.Code, source.SupplierPart, source.Cost.ToString("0.##", CultureInfo.InvariantCulture), $"{source.LeadTimeDays}", $"{source.LeastQuantity}")));

    public static string Join(IEnumerable<SourceCells> sources) => string.Join("; ", sources.Select(source => string.Join(" | ", source.Supplier, source.SupplierPart, source.Cost, source.Days, source.Least)));

    /// <summary>The cells as they stand; a supplier with too few of them is filled up with blanks, one with too many ends in all that is left.</summary>
    public static IReadOnlyList<SourceCells> Split(string text) =>
    [
        .. from source in text.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
           let cells = source.Split('|', 5, StringSplitOptions.TrimEntries).Concat(Enumerable.Repeat("", 4)).Take(5).ToArray()
           select new SourceCells(cells[0], cells[1], cells[2], cells[3], cells[4]),
    ];

    internal static List<BlankSource> Read(CsvRow row, IReadOnlyDictionary<string, Vendor> vendors) =>
        [.. Split(row.Maybe(Column) ?? "").Select(cells => Source(row, cells, vendors)).OfType<BlankSource>().OrderBy(source => source.Supplier.Code, StringComparer.Ordinal)];

    /// <summary>The part's cells as they would be if it were usually bought from another of its suppliers; the usual one takes that one's place.</summary>
    public static Dictionary<string, string> BoughtFrom(BlankPart part, string supplierCode)
    {
        var (others, usual) = (Split(Write(part.OtherSources)), Split(Write([part.Usual]))[0]);
        var chosen = others.First(source => source.Supplier == supplierCode);
        return new Dictionary<string, string>(BlankColumns.Cells(part))
        {
            ["supplier"] = chosen.Supplier,
            ["supplierPart"] = chosen.SupplierPart,
            ["costUsd"] = chosen.Cost,
            ["leadTimeDays"] = chosen.Days,
            ["leastQuantity"] = chosen.Least,
            [Column] = Join(others.Where(source => source != chosen).Append(usual)),
        };
    }

    private static BlankSource? Source(CsvRow row, SourceCells cells, IReadOnlyDictionary<string, Vendor> vendors)
    {
        if (!vendors.TryGetValue(cells.Supplier, out var supplier))
        {
            row.Wrong(Column, $"\"{CsvRow.Short(cells.Supplier)}\" is no supplier. Write supplier | its part number | cost | days | least quantity, semicolons between two suppliers.");
            return null;
        }
        var (cost, days, least) = (Figure(row, cells, cells.Cost, "cost"), Figure(row, cells, cells.Days, "lead time in days"), Figure(row, cells, cells.Least, "least quantity"));
        return new BlankSource { SupplierId = supplier.Id, Supplier = supplier, SupplierPart = cells.SupplierPart, Cost = cost, LeadTimeDays = Whole(row, cells, days), LeastQuantity = Whole(row, cells, least) };
    }

    private static decimal Figure(CsvRow row, SourceCells cells, string text, string what)
    {
        if (decimal.TryParse(row.Figure(text), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var figure))
            return figure;
        row.Wrong(Column, $"{cells.Supplier} needs its {what}, not \"{CsvRow.Short(text)}\".");
        return 1;
    }

    private static int Whole(CsvRow row, SourceCells cells, decimal figure)
    {
        if (figure != decimal.Floor(figure) || Math.Abs(figure) > 1_000_000)
            row.Wrong(Column, $"Days and least quantity of {cells.Supplier} are whole numbers.");
        return (int)Math.Clamp(figure, -1_000_000, 1_000_000);
    }
}

/// <summary>One supplier of a part as it is typed.</summary>
public sealed record SourceCells(string Supplier, string SupplierPart, string Cost, string Days, string Least);
