using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Office;

/// <summary>The lobes that a blank was milled for, inside the blank's own.</summary>
internal static class NominalLobes
{
    public static CamSection? Of(BlankPart part)
    {
        if (part.Nominal is not { } nominal)
            return null;
        var blank = PreparedBlank.Of(part);
        return new CamSection(part.PartNumber, Lobe("intake", blank.Intake, nominal.Intake, nominal, part), Lobe("exhaust", blank.Exhaust, nominal.Exhaust, nominal, part));
    }

    private static LobeSection Lobe(string name, BlankOutline outline, LobeSpec lobe, NominalGrind nominal, BlankPart part) =>
        LobeSection.Of(name, outline, new FinishLobe(PolynomialLaw.Solve(lobe), nominal.Follower), nominal.BaseCircleDiameterIn, 0, part.CaseDepthIn);
}
