using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>The closest specifications that do come out of a blank, when the wish does not, or not from stock (docs/mathematics-nearest.md).</summary>
public static class NearestGrinds
{
    private const int MostOffers = 3, MostTogether = 2;

    /// <summary>Changes all figures together only where no single change stays within this cost.</summary>
    private const double NearEnough = 6;

    /// <param name="grind">The wish.</param>
    /// <param name="family">Its engine family.</param>
    /// <param name="blanks">Blanks with their stock; those of other families are passed over.</param>
    /// <param name="rules">The shop's limits and tables.</param>
    /// <param name="cancel">Ends the search.</param>
    /// <returns>Up to three offers, nearest first and really different from each other; none where the wish can be ground from stock.</returns>
    public static IReadOnlyList<NearestGrind> Of(GrindSpec grind, EngineFamily family, IEnumerable<StockedBlank> blanks, ShopRules rules, CancellationToken cancel = default)
    {
        var ours = blanks.Where(stocked => stocked.Blank.Part.EngineFamily.Code == family.Code).ToList();
        return Of(FeasibilityJudge.Judge(grind, family, ours, rules), family, ours, rules, cancel);
    }

    /// <summary>The same for a wish that has been judged against these blanks.</summary>
    public static IReadOnlyList<NearestGrind> Of(FeasibilityAnswer answer, EngineFamily family, IReadOnlyList<StockedBlank> blanks, ShopRules rules, CancellationToken cancel = default)
    {
        if (answer.Verdict == Verdict.FromStock)
            return [];
        var worth = answer.Verdict == Verdict.SpecialOrder ? [.. blanks.Where(stocked => stocked.Available > 0)] : blanks;
        var cams = new DrawnCams(family);
        var candidates = OtherGear(answer, family, worth, rules).Concat(OtherFigures(answer.Grind, family, worth, rules, cams, cancel));
        return Chosen(answer.Grind, candidates, cams, rules);
    }

    /// <summary>The cam as wished, where the distributor gear alone stands against it.</summary>
    private static IEnumerable<NearCandidate> OtherGear(FeasibilityAnswer answer, EngineFamily family, IReadOnlyList<StockedBlank> blanks, ShopRules rules) =>
        from fit in answer.Blanks
        where fit is { Fits: true, Gear.Verdict: GearVerdict.No }
        join stocked in blanks on (fit.PartNumber, fit.Lot) equals (stocked.Blank.Part.PartNumber, stocked.Lot)
        let gear = rules.GearFor(family.Gear, stocked.Blank.Part.Gear)
        where gear is not null
        let offered = answer.Grind with { DistributorGear = gear }
        select new NearCandidate(offered, stocked, GrindDistance.Cost(answer.Grind, offered, stocked.Available > 0));

    private static IEnumerable<NearCandidate> OtherFigures(
        GrindSpec wish, EngineFamily family, IReadOnlyList<StockedBlank> blanks, ShopRules rules, DrawnCams cams, CancellationToken cancel)
    {
        var search = new GrindSearch(wish, new PhaseSteps(wish));
        var trials = blanks.Where(stocked => Allowed(wish, family, stocked.Blank.Part, rules)).Select(stocked => new BlankTrial(stocked, cams, rules, cancel)).ToList();
        var single = trials.SelectMany(search.OneChange).ToList();
        return single.Exists(candidate => candidate.Cost <= NearEnough)
            ? single
            : single.Concat(trials.Where(trial => trial.Stocked.Blank.Part.Nominal is not null)
                .OrderBy(trial => FromNominal(wish, trial)).Take(MostTogether).SelectMany(search.AllTogether));
    }

    private static bool Allowed(GrindSpec wish, EngineFamily family, BlankPart part, ShopRules rules) =>
        !BlankObjections.Rules(wish, family, part, rules).Any() && rules.Gear(family, part.Gear, wish.DistributorGear).Verdict != GearVerdict.No;

    private static double FromNominal(GrindSpec wish, BlankTrial trial)
    {
        var nominal = trial.Stocked.Blank.Part.Nominal!;
        return GrindDistance.Cost(wish, wish with
        {
            Intake = nominal.Intake,
            Exhaust = nominal.Exhaust,
            LobeSeparationCamDeg = nominal.LobeSeparationCamDeg,
            IntakeCenterlineCrankDeg = nominal.IntakeCenterlineCrankDeg,
        }, trial.InStock);
    }

    private static List<NearestGrind> Chosen(GrindSpec wish, IEnumerable<NearCandidate> candidates, DrawnCams cams, ShopRules rules)
    {
        var chosen = new List<NearestGrind>();
        foreach (var candidate in candidates.OrderBy(candidate => candidate.Cost).ThenBy(candidate => candidate.Blank.Available == 0).ThenBy(candidate => candidate.Blank.Blank.Part.IsSoft))
            if (chosen.Count < MostOffers && chosen.TrueForAll(offer => ReallyDifferent.From(wish, offer.Grind, candidate.Grind)) && Offer(wish, candidate, cams, rules) is { } next)
                chosen.Add(next);
        return chosen;
    }

    /// <summary>Judged in full, so that what is offered can be ground.</summary>
    private static NearestGrind? Offer(GrindSpec wish, NearCandidate candidate, DrawnCams cams, ShopRules rules)
    {
        var cam = cams.Of(candidate.Grind);
        var fit = BlankJudge.Judge(cam, candidate.Blank, new CamRules(candidate.Grind, cam.Family, rules));
        return !fit.Usable ? null : new NearestGrind
        {
            Grind = candidate.Grind,
            Fit = fit,
            GivenUp = [.. GivenUpWords.Of(wish, candidate.Grind, fit, cam.Family)],
            Cost = candidate.Cost,
        };
    }
}
