using System.Globalization;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Planning;
using GrindShop.Web.Shell;

namespace GrindShop.Web.Office;

/// <summary>A part number to add or drop, and why in words.</summary>
public sealed record ShelfStep(string PartNumber, string What, string Why);

/// <summary>Today's shelf beside the best one of a size: what to add and drop, and which lost wishes it would have served.</summary>
public sealed class ShelfAdvice
{
    private readonly ShelfPlan _plan;
    private readonly IReadOnlyList<Served> _today, _best;

    public ShelfAdvice(ShelfPlan plan, int size)
    {
        (_plan, Best, Proof) = (plan, plan.Best[size - 1], plan.Plans[size - 1]);
        (_today, _best) = (plan.Serve(plan.Today), plan.Serve(Best));
        Add = [.. Best.Sites.Except(plan.Today.Sites).OrderByDescending(site => plan.WorthOf(site, Best)).Select(Added)];
        Drop = [.. plan.Today.Sites.Except(Best.Sites).OrderBy(site => plan.WouldSave(site, Best)).Select(Dropped)];
        Won = [.. _best.Where((served, i) => served.Demand.Kind == DemandKind.Unmet && served.Blank is not null && _today[i].Blank is null)];
    }

    public Shelf Best { get; }

    public SitePlan Proof { get; }

    public IReadOnlyList<ShelfStep> Add { get; }

    public IReadOnlyList<ShelfStep> Drop { get; }

    /// <summary>Unmet wishes that the best shelf serves and today's does not.</summary>
    public IReadOnlyList<Served> Won { get; }

    public double TodayAsIs => AsIs(_today);

    public double BestAsIs => AsIs(_best);

    public string Bound => Proof.Proven
        ? "Proven: no other choice of so many costs less."
        : $"Not proven: at best {Money.Whole(ShelfPlan.InDollars(Proof.Bound))} is possible, so at most {Money.Percent(Proof.Gap)} could still be saved.";

    /// <summary>What serving takes, in words.</summary>
    public static string Words(Served served) => served.Serving.Kind == ServingKind.AsIs ? "as wished" : "with " + string.Join(" and ", Changes(served.Serving));

    private static IEnumerable<string> Changes(Serving serving)
    {
        foreach (var (name, lobe) in new[] { ("intake", serving.Intake), ("exhaust", serving.Exhaust) })
        {
            if (lobe.CenterlineCrankDeg != 0)
                yield return string.Create(CultureInfo.InvariantCulture, $"the {name} centreline {lobe.CenterlineCrankDeg:+0.0;-0.0}°");
            if (lobe.DurationCrankDeg != 0)
                yield return string.Create(CultureInfo.InvariantCulture, $"the {name} {lobe.DurationCrankDeg:+0.#;-0.#}° at .050");
        }
    }

    private ShelfStep Added(int site)
    {
        var served = _best.Where(one => one.Blank == _plan.Blank(site)).ToList();
        var lost = served.Count(one => _today[IndexOf(one)].Blank is null);
        return Step(site, $"{Say.Count(served.Sum(one => one.Demand.Quantity), "cam")} of those asked for {(served.Count == 1 ? "is" : "are")} best ground from it"
            + (lost > 0 ? $", {Say.Count(lost, "wish")} of them with no blank on today's shelf" : "") + $". Without it the shelf would cost {Money.Whole(_plan.WorthOf(site, Best))} more.");
    }

    private ShelfStep Dropped(int site)
    {
        var served = _today.Where(one => one.Blank == _plan.Blank(site)).ToList();
        var elsewhere = served.Select(one => _best[IndexOf(one, _today)].Blank).OfType<PreparedBlank>().GroupBy(blank => blank.Part.PartNumber).OrderByDescending(part => part.Count()).Select(part => part.Key).Take(2).ToList();
        return Step(site, (_plan.Case.UsedUp.Contains(_plan.Blank(site).Part.PartNumber) ? "A newer part replaces it: use it up. " : "") + (served.Count == 0 ? "No cam asked for is best ground from it even today." : $"Its {Say.Count(served.Sum(one => one.Demand.Quantity), "cam")} {(elsewhere.Count == 0 ? "would be lost" : "would go to " + string.Join(" and ", elsewhere))}.")
            + $" Beside the best shelf it would save only {Money.Whole(_plan.WouldSave(site, Best))}.");
    }

    private int IndexOf(Served served, IReadOnlyList<Served>? among = null)
    {
        among ??= _best;
        for (var i = 0; i < among.Count; i++)
            if (ReferenceEquals(among[i], served))
                return i;
        throw new ArgumentException("Not of this plan.", nameof(served));
    }

    private ShelfStep Step(int site, string why) => new(_plan.Blank(site).Part.PartNumber, Words(_plan.Blank(site).Part), why);

    public static string Words(BlankPart part) => part.Nominal is { } nominal
        ? string.Create(CultureInfo.InvariantCulture, $"{part.Alloy.Words()}, {part.Form.Words()}, {nominal.Intake.DurationAt050CrankDeg:0.#}/{nominal.Exhaust.DurationAt050CrankDeg:0.#} at .050 on {nominal.LobeSeparationCamDeg:0.#}")
        : $"{part.Alloy.Words()}, {part.Form.Words()}";

    private static double AsIs(IReadOnlyList<Served> served)
    {
        var all = served.Sum(one => one.Demand.Quantity);
        return all == 0 ? 0 : (double)served.Where(one => one is { Blank: not null, Serving.Kind: ServingKind.AsIs }).Sum(one => one.Demand.Quantity) / all;
    }
}
