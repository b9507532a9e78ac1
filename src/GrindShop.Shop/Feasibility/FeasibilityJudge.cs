using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>From which blank can this cam be ground? A pure function of the specification, the blanks of its family and the shop's rules.</summary>
public static class FeasibilityJudge
{
    public static FeasibilityAnswer Judge(GrindSpec grind, EngineFamily family, IEnumerable<StockedBlank> blanks, ShopRules rules)
    {
        var (cam, said) = (new FinishedCam(grind, family), new CamRules(grind, family, rules));
        var fits = blanks
            .Where(stocked => stocked.Blank.Part.EngineFamily.Code == family.Code)
            .Select(stocked => BlankJudge.Judge(cam, stocked, said))
            .OrderBy(BestFirst.Key)
            .ToList();
        fits = OnePerPart.Of(fits);
        var verdict = VerdictOf(fits);
        return new FeasibilityAnswer { Grind = grind, Blanks = fits, Verdict = verdict, Reasons = VerdictReasons.Of(verdict, cam, fits) };
    }

    private static Verdict VerdictOf(IReadOnlyList<BlankFit> fits) =>
        fits.Any(fit => fit is { Usable: true, InStock: true }) ? Verdict.FromStock
        : fits.Any(fit => fit.Usable) ? Verdict.SpecialOrder
        : Verdict.NotGrindable;
}

/// <summary>Usable before not, stock before order, hardened before soft, sure gears before doubtful, then the larger base circle and the lesser removal.</summary>
internal static class BestFirst
{
    public static (bool, bool, bool, bool, bool, double, double, string) Key(BlankFit fit) =>
    (
        !fit.Usable,
        !fit.Fits,
        !fit.InStock,
        fit.NeedsHeatTreat,
        fit.Gear.Verdict == GearVerdict.Caution,
        -Math.Round(Math.Min(fit.IntakeBaseCircleDiameterIn ?? 0, fit.ExhaustBaseCircleDiameterIn ?? 0), 2),
        fit.MaxRemovalIn ?? double.MaxValue,
        fit.PartNumber
    );
}
