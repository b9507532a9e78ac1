using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;

namespace GrindShop.Shop.Routing;

/// <summary>The stations a cam passes; only those of its route.</summary>
public enum Stage
{
    /// <summary>A cam of the customer's comes in.</summary>
    Receive,
    PressGear,
    Grind,
    RoughGrind,
    HeatTreatOut,
    HeatTreatBack,
    Straighten,
    FinishGrind,
    Finish,
    Inspect,
    Ship,
}

/// <summary>One stage of a route, and the vendor where it is done outside.</summary>
public sealed record RouteStage(Stage Stage, Vendor? Vendor = null);

public static class Stages
{
    public static string Words(this Stage stage) => stage switch
    {
        Stage.Receive => "receive",
        Stage.PressGear => "press gear",
        Stage.Grind => "grind",
        Stage.RoughGrind => "rough grind",
        Stage.HeatTreatOut => "send to heat treat",
        Stage.HeatTreatBack => "receive from heat treat",
        Stage.Straighten => "straighten",
        Stage.FinishGrind => "finish grind",
        Stage.Finish => "finish",
        Stage.Inspect => "inspect",
        _ => "ship",
    };

    /// <summary>What is done there, for the traveler and the tablet.</summary>
    public static string Instructions(this Stage stage) => stage switch
    {
        Stage.Receive => "Compare the cam with the received condition, tag it with the job code, measure lobes and journals.",
        Stage.PressGear => "Press the worn gear off and the new one on; check its seat, run-out and end play face.",
        Stage.Grind => "Take the blank from its lot, grind all lobes to the table.",
        Stage.RoughGrind => "Take the blank from its lot, rough grind all lobes; leave finish stock.",
        Stage.HeatTreatOut => "Count, pack and send with the vendor order.",
        Stage.HeatTreatBack => "Count, read the certificate, check hardness and case.",
        Stage.Straighten => "Check run-out on centres, straighten.",
        Stage.FinishGrind => "Finish grind all lobes to the table.",
        Stage.Finish => "Deburr, polish or phosphate, stamp the job code.",
        Stage.Inspect => "Measure lifts, centrelines, base-circle run-out; record.",
        _ => "Pack with the spec card, ship.",
    };

    /// <summary>The route of a cam that came in.</summary>
    public static IReadOnlyList<RouteStage> RouteFor(WorkKind repair) => repair == WorkKind.GearReplacement
        ? [new(Stage.Receive), new(Stage.PressGear), new(Stage.Inspect), new(Stage.Ship)]
        : [new(Stage.Receive), new(Stage.Grind), new(Stage.Finish), new(Stage.Inspect), new(Stage.Ship)];

    /// <summary>
    /// The route that follows from the blank's state: a hardened blank is ground at once, a soft one is rough ground, hardened by the vendor,
    /// straightened and finish ground.
    /// </summary>
    public static IReadOnlyList<RouteStage> RouteFor(BlankPart blank, Vendor? heatTreater) => blank.IsSoft
        ?
        [
            new(Stage.RoughGrind), new(Stage.HeatTreatOut, heatTreater), new(Stage.HeatTreatBack, heatTreater),
            new(Stage.Straighten), new(Stage.FinishGrind), new(Stage.Finish), new(Stage.Inspect), new(Stage.Ship),
        ]
        : [new(Stage.Grind), new(Stage.Finish), new(Stage.Inspect), new(Stage.Ship)];
}
