using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>The owner's limits and tables as one immutable value for the judge.</summary>
public sealed class ShopRules(ShopSettings settings, IEnumerable<GearRule> gears, IEnumerable<LifterRule> lifters)
{
    private readonly Dictionary<(CamGear, DistributorGear), GearRule> _gears = gears.ToDictionary(rule => (rule.CamGear, rule.DistributorGear));
    private readonly Dictionary<(BlankAlloy, LifterType), LifterRule> _lifters = lifters.ToDictionary(rule => (rule.Alloy, rule.Lifter));

    public ShopSettings Settings { get; } = settings;

    /// <summary>Least case that must stay under the finished lobe, in; null where the hardness has no end.</summary>
    public double? LeastCaseIn(Hardening hardening) => hardening switch
    {
        Hardening.Induction => Settings.LeastInductionCaseIn,
        Hardening.Carburized => Settings.LeastCarburizedCaseIn,
        _ => null,
    };

    /// <summary>How much metal must and may come off this blank.</summary>
    public BandLimits Limits(PreparedBlank blank) =>
        new(Settings.CleanupIn, blank.Metal.CaseDepthIn, blank.Metal.CaseDepthIn is null ? null : LeastCaseIn(blank.Part.Hardening));

    public IEnumerable<GearRule> Gears => _gears.Values;

    /// <summary>Null where the owner has written no rule for the pair.</summary>
    public LifterRule? Lifter(BlankAlloy alloy, LifterType lifter) => _lifters.GetValueOrDefault((alloy, lifter));

    /// <summary>What to say about running this cam's gear with the customer's distributor gear.</summary>
    public GearAdvice Gear(EngineFamily family, CamGear cam, DistributorGear? distributor)
    {
        if (family.Gear == GearPosition.None)
            return new GearAdvice(GearVerdict.None, "This engine has no distributor gear on the cam.");
        if (distributor is not { } wanted)
            return new GearAdvice(GearVerdict.None, $"No distributor gear named. {Advice(cam)}");
        return _gears.TryGetValue((cam, wanted), out var rule)
            ? new GearAdvice(Verdict(rule.Verdict), rule.Reason)
            : new GearAdvice(GearVerdict.Caution, "The shop has no rule for this pair of gears: ask before you run it.");
    }

    /// <summary>A distributor gear to run on this cam gear: a sure one before a doubtful one; null where every one is forbidden.</summary>
    public DistributorGear? GearFor(CamGear cam) => _gears.Values
        .Where(rule => rule.CamGear == cam && rule.Verdict != RuleVerdict.No)
        .OrderBy(rule => rule.Verdict).ThenBy(rule => rule.DistributorGear)
        .Select(rule => (DistributorGear?)rule.DistributorGear).FirstOrDefault();

    private string Advice(CamGear cam)
    {
        var runs = _gears.Values.Where(rule => rule.CamGear == cam && rule.Verdict == RuleVerdict.Ok).Select(rule => rule.DistributorGear.Words()).ToList();
        return runs.Count == 0 ? "The shop has no rule for this cam gear: ask before you run it." : $"{Capital(cam.Words())} on the cam runs with: {string.Join(", ", runs)}.";
    }

    private static GearVerdict Verdict(RuleVerdict verdict) => verdict switch
    {
        RuleVerdict.Ok => GearVerdict.Ok,
        RuleVerdict.Caution => GearVerdict.Caution,
        _ => GearVerdict.No,
    };

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
