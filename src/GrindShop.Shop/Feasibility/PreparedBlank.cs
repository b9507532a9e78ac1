using System.Collections.Concurrent;
using GrindShop.Lobes;
using GrindShop.Shop.Blanks;

namespace GrindShop.Shop.Feasibility;

/// <summary>A catalog part with its lobes' geometry computed once. Immutable.</summary>
public sealed class PreparedBlank
{
    private readonly ConcurrentDictionary<LotMetal, PreparedBlank> _measured = new();

    private PreparedBlank(BlankPart part, LotMetal metal, BlankOutline intake, BlankOutline exhaust) => (Part, Metal, Intake, Exhaust) = (part, metal, intake, exhaust);

    public BlankPart Part { get; }

    /// <summary>Stock and case it is judged with: the catalog's, or less where a lot measures less.</summary>
    public LotMetal Metal { get; }

    public BlankOutline Intake { get; }

    public BlankOutline Exhaust { get; }

    public static PreparedBlank Of(BlankPart part) => Of(part, LotMetal.Nominal(part));

    /// <summary>The same part with the metal of one of its lots; made on first use and kept.</summary>
    public PreparedBlank With(LotMetal metal) => metal == Metal ? this : _measured.GetOrAdd(metal, less => Of(Part, less));

    private static PreparedBlank Of(BlankPart part, LotMetal metal)
    {
        if (part.Nominal is not { } nominal)
        {
            var round = BlankOutline.Round(part.RoundDiameterIn ?? throw new ArgumentException($"Blank {part.PartNumber} has neither lobes nor a diameter.", nameof(part)));
            return new PreparedBlank(part, metal, round, round);
        }
        var stockIn = metal.StockIn ?? nominal.StockIn;
        var intake = Milled(nominal, nominal.Intake, stockIn);
        return new PreparedBlank(part, metal, intake, nominal.Exhaust == nominal.Intake ? intake : Milled(nominal, nominal.Exhaust, stockIn));
    }

    private static BlankOutline Milled(NominalGrind nominal, LobeSpec lobe, double stockIn) =>
        BlankOutline.Milled(PolynomialLaw.Solve(lobe), nominal.Follower, nominal.BaseCircleDiameterIn, stockIn);
}

/// <summary>A blank and how many of it are in stock and not promised to a job.</summary>
/// <param name="Blank">The part, or one lot of it that measures less than the catalog says.</param>
/// <param name="Available">How many.</param>
/// <param name="Lot">That lot; null where the catalog's figures hold.</param>
public sealed record StockedBlank(PreparedBlank Blank, int Available, string? Lot = null);
