using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Planning;

/// <summary>What serving one specification costs from any blank of its family.</summary>
internal sealed class SpecServing
{
    private readonly GrindSpec _grind;
    private readonly EngineFamily _family;
    private readonly ServingWeights _weights;
    private readonly LobeVariants _intake, _exhaust;
    private readonly double? _roomIn;

    public SpecServing(GrindSpec grind, EngineFamily family, ServingWeights weights, LobeLibrary lobes)
    {
        (_grind, _family, _weights) = (grind, family, weights);
        (_intake, _exhaust) = (lobes.Of(grind.Intake, grind), lobes.Of(grind.Exhaust, grind));
        _roomIn = FinishedCam.RoomIn(grind, family);
    }

    /// <summary>Judges metal and case only; the rules of the trade are the caller's.</summary>
    public Serving From(PreparedBlank blank, ShopRules rules)
    {
        var (part, limits) = (blank.Part, rules.Limits(blank));
        var least = Math.Max(part.LeastBaseCircleIn, _family.LeastBaseCircleIn);
        var nominal = part.Nominal;
        var change = new LobeChange(_intake, _weights, _roomIn, least);
        if (change.Find(blank.Intake, limits, _grind.IntakeCenterlineCrankDeg - nominal?.IntakeCenterlineCrankDeg, 1) is not { } intake)
            return default;
        return new LobeChange(_exhaust, _weights, _roomIn, least).Find(blank.Exhaust, limits, _grind.ExhaustCenterlineCrankDeg - nominal?.ExhaustCenterlineCrankDeg, -1) is { } exhaust
            ? Sum(part, intake, exhaust, change.Dollars(intake) + change.Dollars(exhaust))
            : default;
    }

    private Serving Sum(BlankPart part, LobeServing intake, LobeServing exhaust, double changes)
    {
        var changed = intake.IsChanged || exhaust.IsChanged;
        var usual = Math.Min(_family.UsualBaseCircleIn, _roomIn ?? double.PositiveInfinity);
        var givenUp = Math.Max(0, usual - Math.Min(intake.BaseCircleDiameterIn, exhaust.BaseCircleDiameterIn));
        var caseGone = part.CaseDepthIn is null ? 0 : Math.Max(intake.MostRemovalIn, exhaust.MostRemovalIn);
        var minutes = GrindingTime.Minutes(_grind, _family, intake, exhaust, _weights.RemovalIn3PerMinute);
        var dollars = (changed ? _weights.AnyChange + changes : 0)
            + 1000 * (givenUp * _weights.BaseCircleThousandth + caseGone * _weights.CaseThousandth)
            + minutes / 60 * _weights.GrindingHour + (part.IsSoft ? _weights.HeatTreat : 0);
        return new Serving(changed ? ServingKind.Changed : ServingKind.AsIs, intake, exhaust, givenUp, caseGone, minutes, dollars);
    }
}

/// <summary>Time to grind a cam, estimated from the metal that comes off.</summary>
internal static class GrindingTime
{
    /// <summary>
    /// Metal = mean of least and most removal, times the lobe's round (as long as a circle that holds base circle and half the lift), times its width,
    /// for one lobe of each sort a cylinder. An estimate to compare blanks by, not a time study.
    /// </summary>
    public static double Minutes(GrindSpec grind, EngineFamily family, LobeServing intake, LobeServing exhaust, double in3PerMinute) =>
        Cylinders(family) * family.LobeWidthIn * (Section(intake, grind.Intake.LobeLiftIn) + Section(exhaust, grind.Exhaust.LobeLiftIn)) / in3PerMinute;

    private static double Section(LobeServing lobe, double liftIn) =>
        (lobe.LeastRemovalIn + lobe.MostRemovalIn) / 2 * Math.PI * (lobe.BaseCircleDiameterIn + liftIn / 2);

    private static int Cylinders(EngineFamily family) => family.HasSides ? family.Cylinders / 2 : family.Cylinders;
}
