using GrindShop.Lobes;

namespace GrindShop.Web.Api;

/// <summary>Turns the parts of a calculation request into the kernel's values, or names the fields that stand in the way.</summary>
internal static class CalcParts
{
    public static Follower? Follower(FollowerFields fields, string path, FieldProblems problems)
    {
        if (fields.Kind == "flat")
            return Lobes.Follower.Flat;
        if (fields.RadiusIn is { } radius)
            return Lobes.Follower.Roller(radius);
        problems.Add($"{path}.radiusIn", "radiusIn is required for a roller, between 0.05 and 20 in.");
        return null;
    }

    public static PolynomialLaw? Law(LobeFields lobe, string path, FieldProblems problems)
    {
        var spec = new LobeSpec(lobe.LobeLiftIn!.Value, lobe.DurationAt050CrankDeg!.Value, lobe.AdvertisedDurationCrankDeg!.Value, lobe.AdvertisedAtIn!.Value);
        if (PolynomialLaw.TrySolve(spec, out var law, out var error))
            return law;
        problems.Add($"{path}.advertisedDurationCrankDeg", error.Message);
        return null;
    }

    public static FinishLobe? Finish(LobeFields lobe, FollowerFields follower, string lobePath, string followerPath, FieldProblems problems)
    {
        var rides = Follower(follower, followerPath, problems);
        return Law(lobe, lobePath, problems) is { } law && rides is { } known ? new FinishLobe(law, known) : null;
    }

    public static BlankOutline? Milled(LobeFields lobe, FollowerFields follower, double baseCircle, double stock, string lobePath, string followerPath, FieldProblems problems)
    {
        var rides = Follower(follower, followerPath, problems);
        return Law(lobe, lobePath, problems) is { } law && rides is { } known ? BlankOutline.Milled(law, known, baseCircle, stock) : null;
    }

    public static BlankOutline? Blank(BlankFields blank, FieldProblems problems)
    {
        if (blank.Form == "round")
            return Need(blank.DiameterIn, "blank.diameterIn", "a round blank", problems) ? BlankOutline.Round(blank.DiameterIn!.Value) : null;
        var whole = Need(blank.Lobe, "blank.lobe", "a milled blank", problems)
            & Need(blank.Follower, "blank.follower", "a milled blank", problems)
            & Need(blank.BaseCircleDiameterIn, "blank.baseCircleDiameterIn", "a milled blank", problems)
            & Need(blank.StockIn, "blank.stockIn", "a milled blank", problems);
        return whole ? Milled(blank.Lobe!, blank.Follower!, blank.BaseCircleDiameterIn!.Value, blank.StockIn!.Value, "blank.lobe", "blank.follower", problems) : null;
    }

    public static BandLimits Limits(double cleanup, double? caseDepth, double? leastCase) => new(cleanup, caseDepth, caseDepth is null ? null : leastCase);

    private static bool Need(object? value, string field, string what, FieldProblems problems)
    {
        if (value is null)
            problems.Add(field, $"{field[(field.LastIndexOf('.') + 1)..]} is required for {what}.");
        return value is not null;
    }
}
