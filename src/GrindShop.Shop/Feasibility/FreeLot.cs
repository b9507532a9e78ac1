using GrindShop.Shop.Blanks;

namespace GrindShop.Shop.Feasibility;

/// <summary>A lot with blanks that may be promised to a job.</summary>
internal sealed record FreeLot(int PartId, string LotNumber, int Free, double? MeasuredStockIn, double? MeasuredCaseIn)
{
    /// <summary>The part with the blanks that are as the catalog says, and each lot that measures less, with its own metal.</summary>
    public static IEnumerable<StockedBlank> Of(PreparedBlank blank, IEnumerable<FreeLot> lots)
    {
        var (asNominal, lesser) = (0, new List<StockedBlank>());
        foreach (var lot in lots)
            if (LotMetal.Of(blank.Part, lot.MeasuredStockIn, lot.MeasuredCaseIn) is var metal && metal != blank.Metal)
                lesser.Add(new StockedBlank(blank.With(metal), lot.Free, lot.LotNumber));
            else
                asNominal += lot.Free;
        return [new StockedBlank(blank, asNominal), .. lesser];
    }
}
