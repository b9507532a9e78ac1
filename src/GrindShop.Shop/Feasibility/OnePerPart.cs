namespace GrindShop.Shop.Feasibility;

/// <summary>
/// Where lots of a part measure less than the catalog says, the part and each such lot were judged apart; one answer is kept for the part: the
/// best that is usable, else the catalog's; with what is free of all lots from which the cam comes out.
/// </summary>
internal static class OnePerPart
{
    /// <param name="fits">Best first.</param>
    public static List<BlankFit> Of(List<BlankFit> fits) =>
        fits.Exists(fit => fit.Lot is not null) ? [.. fits.GroupBy(fit => fit.PartNumber).Select(part => Best([.. part])).OrderBy(BestFirst.Key)] : fits;

    private static BlankFit Best(IReadOnlyList<BlankFit> part) => Kept(part) with
    {
        Free = [.. part.SelectMany(fit => fit.Free).GroupBy(free => free.Metal).Select(same => same.First() with { Blanks = same.Sum(free => free.Blanks) })],
    };

    private static BlankFit Kept(IReadOnlyList<BlankFit> part)
    {
        var kept = part.FirstOrDefault(fit => fit.Usable) ?? part.FirstOrDefault(fit => fit.Lot is null) ?? part[0];
        if (!kept.Usable)
            return kept with { InStock = part.Any(fit => fit.InStock) };
        return kept.InStock ? kept : kept with { Reasons = [.. kept.Reasons, .. part.Where(fit => fit is { Lot: not null, Usable: false }).Select(TooLittle)] };
    }

    private static string TooLittle(BlankFit fit) => $"{fit.Reasons[0].Replace("From lot", "In stock is lot", StringComparison.Ordinal).TrimEnd('.')}: this cam does not come out of it.";
}
