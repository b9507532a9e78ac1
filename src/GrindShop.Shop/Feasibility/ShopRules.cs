using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>The owner's limits and rules as one immutable value for the judge; what the owner has not written is as in <see cref="StartingRules"/>.</summary>
public sealed class ShopRules
{
    private readonly Dictionary<(GearPosition, CamGear, DistributorGear), GearRule> _gears;
    private readonly Dictionary<(BlankAlloy, LifterType), LifterRule> _lifters;
    private readonly Dictionary<BlankAlloy, PumpRule> _pumps;
    private readonly Dictionary<TradeRuleKind, TradeRule> _trade;

    public ShopRules(ShopSettings settings, IEnumerable<CompatibilityRule> written)
    {
        Settings = settings;
        All = [.. StartingRules.All().Concat(written).GroupBy(rule => rule.Key).Select(rules => rules.Last())];
        _gears = All.OfType<GearRule>().ToDictionary(rule => (rule.Position, rule.CamGear, rule.DistributorGear));
        _lifters = All.OfType<LifterRule>().ToDictionary(rule => (rule.Alloy, rule.Lifter));
        _pumps = All.OfType<PumpRule>().ToDictionary(rule => rule.Alloy);
        _trade = All.OfType<TradeRule>().ToDictionary(rule => rule.Kind);
    }

    public ShopSettings Settings { get; }

    /// <summary>Every rule there is, written or as it starts.</summary>
    public IReadOnlyList<CompatibilityRule> All { get; }

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

    public LifterRule Lifter(BlankAlloy alloy, LifterType lifter) => _lifters[(alloy, lifter)];

    public PumpRule Pump(BlankAlloy alloy) => _pumps[alloy];

    public TradeRule Trade(TradeRuleKind kind) => _trade[kind];

    /// <summary>What stands against this cam on this blank or is to be minded, the metal and the gears apart.</summary>
    public IEnumerable<RuleAdvice> Advice(GrindSpec grind, EngineFamily family, BlankPart part) =>
        Applying(grind, family, part).Where(rule => rule.Verdict != RuleVerdict.Ok).Select(rule => new RuleAdvice(rule.Key, rule.Verdict, Said(rule, part)));

    /// <summary>What to say about running this cam's gear with the customer's distributor gear.</summary>
    public GearAdvice Gear(EngineFamily family, CamGear cam, DistributorGear? distributor)
    {
        if (family.Gear == GearPosition.None)
            return new GearAdvice(GearVerdict.None, "This engine has no distributor gear on the cam.");
        if (distributor is not { } wanted)
            return Unnamed(family.Gear, cam);
        return _gears.TryGetValue((family.Gear, cam, wanted), out var rule)
            ? new GearAdvice(Verdict(rule.Verdict), rule.Reason)
            : new GearAdvice(GearVerdict.Caution, "The shop has no rule for this pair of gears: ask before you run it.");
    }

    /// <summary>The gear table of engines that carry the gear at this end; empty for those that have none.</summary>
    public IEnumerable<GearRule> Gears(GearPosition position) => _gears.Values.Where(rule => rule.Position == position);

    /// <summary>A distributor gear to run on this cam gear: a sure one before a doubtful one; null where every one is forbidden.</summary>
    public DistributorGear? GearFor(GearPosition position, CamGear cam) => Gears(position, cam)
        .Where(rule => rule.Verdict != RuleVerdict.No)
        .OrderBy(rule => rule.Verdict).ThenBy(rule => rule.DistributorGear)
        .Select(rule => (DistributorGear?)rule.DistributorGear).FirstOrDefault();

    private IEnumerable<CompatibilityRule> Applying(GrindSpec grind, EngineFamily family, BlankPart part)
    {
        yield return Lifter(part.Alloy, grind.Lifter);
        if (part.Form != BlankForm.FullRound && !family.SameSequence(grind.FiringOrder, part.FiringOrder))
            yield return Trade(TradeRuleKind.OtherFiringOrder);
        if (grind.MechanicalFuelPump == true)
            yield return part.FuelPumpLobe ? Pump(part.Alloy) : Trade(TradeRuleKind.NoPumpLobe);
    }

    private static string Said(CompatibilityRule rule, BlankPart part) =>
        rule is TradeRule { Kind: TradeRuleKind.OtherFiringOrder } ? $"Its lobes stand for firing order {part.FiringOrder}. {rule.Reason}" : rule.Reason;

    /// <summary>Which gears may run; where none may, the cam's gear itself is the wrong one for this engine.</summary>
    private GearAdvice Unnamed(GearPosition position, CamGear cam)
    {
        var rules = Gears(position, cam).ToList();
        var runs = rules.Where(rule => rule.Verdict == RuleVerdict.Ok).Select(rule => rule.DistributorGear.Words()).ToList();
        if (runs.Count > 0)
            return new GearAdvice(GearVerdict.None, $"No distributor gear named. {Capital(cam.Words())} on the cam runs with: {string.Join(", ", runs)}.");
        return rules.Count > 0 && rules.TrueForAll(rule => rule.Verdict == RuleVerdict.No)
            ? new GearAdvice(GearVerdict.No, rules[0].Reason)
            : new GearAdvice(GearVerdict.None, "No distributor gear named, and none that surely runs with this cam gear: ask before you run it.");
    }

    private IEnumerable<GearRule> Gears(GearPosition position, CamGear cam) => Gears(position).Where(rule => rule.CamGear == cam);

    private static GearVerdict Verdict(RuleVerdict verdict) => verdict switch
    {
        RuleVerdict.Ok => GearVerdict.Ok,
        RuleVerdict.Caution => GearVerdict.Caution,
        _ => GearVerdict.No,
    };

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
