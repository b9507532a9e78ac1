using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.BlankCatalog;

/// <summary>Can the part be bought so: suppliers of blanks, each once, with prices, days and quantities that can be?</summary>
internal static class SourceCheck
{
    public static void Check(CsvRow row, BlankPart part)
    {
        var usual = part.Usual;
        Seller(row, usual, "supplier");
        Cost(row, usual, "costUsd");
        Days(row, usual, "leadTimeDays");
        Least(row, usual, "leastQuantity");
        Number(row, usual, "supplierPart");
        foreach (var source in part.OtherSources)
            Other(row, source);
        if (part.OtherSources.Append(usual).GroupBy(source => source.Supplier.Code).FirstOrDefault(same => same.Count() > 1) is { } twice)
            row.Wrong(SourceText.Column, $"{twice.Key} is named twice.");
    }

    private static void Other(CsvRow row, BlankSource source)
    {
        foreach (var check in new Action<CsvRow, BlankSource, string>[] { Seller, Cost, Days, Least, Number })
            check(row, source, SourceText.Column);
        if (source.SupplierPart.Contains('|') || source.SupplierPart.Contains(';'))
            row.Wrong(SourceText.Column, "A part number holds no bar and no semicolon here.");
    }

    private static void Seller(CsvRow row, BlankSource source, string column)
    {
        if (source.Supplier.Kind != VendorKind.BlankSupplier)
            row.Wrong(column, $"{source.Supplier.Name} does not supply blanks.");
    }

    private static void Cost(CsvRow row, BlankSource source, string column)
    {
        if (source.Cost is < 0 or > 100_000 || decimal.Round(source.Cost, 2) != source.Cost)
            row.Wrong(column, "A cost lies between 0 and 100,000 USD, two places after the point at the most.");
    }

    private static void Days(CsvRow row, BlankSource source, string column)
    {
        if (source.LeadTimeDays is < 0 or > 1_000)
            row.Wrong(column, "A lead time lies between 0 and 1,000 days.");
    }

    private static void Least(CsvRow row, BlankSource source, string column)
    {
        if (source.LeastQuantity is < 1 or > 100_000)
            row.Wrong(column, "A least quantity lies between 1 and 100,000 blanks.");
    }

    private static void Number(CsvRow row, BlankSource source, string column)
    {
        if (source.SupplierPart.Length > 60)
            row.Wrong(column, "60 letters are the most for a part number.");
    }
}
