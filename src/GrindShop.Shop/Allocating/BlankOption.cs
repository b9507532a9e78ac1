using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;

namespace GrindShop.Shop.Allocating;

/// <summary>One blank that could be taken for a cam, with everything that decides for or against it.</summary>
/// <param name="Fit">What the blank can do for the grind.</param>
/// <param name="Part">The blank's entry in the catalog.</param>
/// <param name="NextReceipt">When more of it are expected; null where none are on order.</param>
public sealed record BlankOption(BlankFit Fit, BlankPart Part, DateOnly? NextReceipt)
{
    /// <summary>Blanks of it that may be promised to this cam now.</summary>
    public int Available => Fit.Available;

    public bool CanBeTaken => Fit.Usable && Available > 0;

    /// <summary>The smaller of the two base circles, in; 0 where a lobe does not come out.</summary>
    public double BaseCircleIn => Math.Min(Fit.IntakeBaseCircleDiameterIn ?? 0, Fit.ExhaustBaseCircleDiameterIn ?? 0);

    public double RemovalIn => Fit.MaxRemovalIn ?? double.PositiveInfinity;
}

/// <summary>An option in its place.</summary>
/// <param name="Option">The blank.</param>
/// <param name="Place">From 1, best first.</param>
/// <param name="Why">Why it stands there and not one place higher.</param>
public sealed record RankedBlank(BlankOption Option, int Place, string Why);
