using GrindShop.Lobes;
using GrindShop.Shop.Blanks;

namespace GrindShop.Shop.Feasibility;

/// <summary>A catalog part with its lobes' geometry computed once. Immutable.</summary>
public sealed class PreparedBlank
{
    private PreparedBlank(BlankPart part, BlankOutline intake, BlankOutline exhaust) => (Part, Intake, Exhaust) = (part, intake, exhaust);

    public BlankPart Part { get; }

    public BlankOutline Intake { get; }

    public BlankOutline Exhaust { get; }

    public static PreparedBlank Of(BlankPart part)
    {
        if (part.Nominal is not { } nominal)
        {
            var round = BlankOutline.Round(part.RoundDiameterIn ?? throw new ArgumentException($"Blank {part.PartNumber} has neither lobes nor a diameter.", nameof(part)));
            return new PreparedBlank(part, round, round);
        }
        var intake = Milled(nominal, nominal.Intake);
        return new PreparedBlank(part, intake, nominal.Exhaust == nominal.Intake ? intake : Milled(nominal, nominal.Exhaust));
    }

    private static BlankOutline Milled(NominalGrind nominal, LobeSpec lobe) =>
        BlankOutline.Milled(PolynomialLaw.Solve(lobe), nominal.Follower, nominal.BaseCircleDiameterIn, nominal.StockIn);
}

/// <summary>A blank and how many of it are in stock and not promised to a job.</summary>
public sealed record StockedBlank(PreparedBlank Blank, int Available);
