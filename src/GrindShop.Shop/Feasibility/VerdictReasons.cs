namespace GrindShop.Shop.Feasibility;

/// <summary>Why the verdict over the whole catalog is what it is.</summary>
internal static class VerdictReasons
{
    public static IReadOnlyList<string> Of(Verdict verdict, FinishedCam cam, IReadOnlyList<BlankFit> fits)
    {
        if (fits.Count == 0)
            return ["The shop's catalog has no blank for this engine family."];
        return verdict switch
        {
            Verdict.FromStock => [$"Can be ground from blank {fits[0].PartNumber}, which is in stock.", .. Cautions(fits[0])],
            Verdict.SpecialOrder => [$"Blank {fits[0].PartNumber} can become this cam but is not in stock: about {fits[0].LeadTimeDays} days to get it.", .. Cautions(fits[0])],
            _ => NotGrindable(fits),
        };
    }

    private static IEnumerable<string> Cautions(BlankFit best) =>
    [
        .. best.Gear.Verdict == GearVerdict.Caution ? [$"Distributor gear: {best.Gear.Reason}"] : Array.Empty<string>(),
        .. best.Cautions.Select(caution => caution.Reason),
    ];

    private static IReadOnlyList<string> NotGrindable(IReadOnlyList<BlankFit> fits) =>
        fits.FirstOrDefault(fit => fit.Fits) is { } wrongGear
            ? [$"Blank {wrongGear.PartNumber} has the metal for it, but not with this distributor gear: {wrongGear.Gear.Reason}"]
            : [$"None of the {fits.Count} blanks of this engine family can become this cam.", $"The nearest, {fits[0].PartNumber}: {fits[0].Reasons[0]}"];
}
