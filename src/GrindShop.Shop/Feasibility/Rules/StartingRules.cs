using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>Every rule there is, with what holds until the owner writes otherwise: common practice of the trade, or the advice to ask.</summary>
public static class StartingRules
{
    private static readonly GearPosition[] Ends = [GearPosition.Rear, GearPosition.Front];

    public static IReadOnlyList<CompatibilityRule> All() =>
    [
        .. from end in Ends
           from cam in Enum.GetValues<CamGear>()
           where cam != CamGear.None
           from distributor in Enum.GetValues<DistributorGear>()
           select Gear(end, cam, distributor),
        .. from alloy in Enum.GetValues<BlankAlloy>() from lifter in Enum.GetValues<LifterType>() select Lifter(alloy, lifter),
        .. Enum.GetValues<BlankAlloy>().Select(Pump),
        .. Enum.GetValues<TradeRuleKind>().Select(Trade),
    ];

    public static GearRule Gear(GearPosition end, CamGear cam, DistributorGear distributor)
    {
        var pressedAtFront = cam == CamGear.PressedIron && end == GearPosition.Front;
        return new GearRule
        {
            Position = end,
            CamGear = cam,
            DistributorGear = distributor,
            Verdict = pressedAtFront ? RuleVerdict.No : RuleVerdict.Caution,
            Reason = pressedAtFront
                ? "An iron gear is pressed on only where it sits at the rear of the cam."
                : "The shop has no rule for this pair of gears: ask before you run it.",
        };
    }

    public static LifterRule Lifter(BlankAlloy alloy, LifterType lifter) => new()
    {
        Alloy = alloy,
        Lifter = lifter,
        Verdict = RuleVerdict.Caution,
        Reason = $"The shop has no rule for a {lifter.Words()} on {alloy.Words()}: ask before you order it.",
    };

    public static PumpRule Pump(BlankAlloy alloy) => new()
    {
        Alloy = alloy,
        Verdict = IsIron(alloy) ? RuleVerdict.Ok : RuleVerdict.Caution,
        Reason = IsIron(alloy)
            ? $"A plain fuel-pump rod runs on a pump lobe of {alloy.Words()}."
            : "A plain fuel-pump rod wears on a steel pump lobe: run a rod with a bronze or composite tip and look at it regularly.",
    };

    public static TradeRule Trade(TradeRuleKind kind) => new()
    {
        Kind = kind,
        Verdict = RuleVerdict.No,
        Reason = kind switch
        {
            TradeRuleKind.OtherFiringOrder => "Another firing order needs a blank milled for it, or a full-round one.",
            _ => "This blank has no lobe for a mechanical fuel pump: choose one that has it, or run an electric pump.",
        },
    };

    private static bool IsIron(BlankAlloy alloy) => alloy is BlankAlloy.HardenableIron or BlankAlloy.AustemperedDuctileIron;
}
