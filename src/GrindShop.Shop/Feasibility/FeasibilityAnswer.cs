using System.Text.Json.Serialization;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

public enum Verdict
{
    FromStock,
    SpecialOrder,
    NotGrindable,
}

public enum GearVerdict
{
    Ok,
    Caution,
    No,

    /// <summary>No distributor in this family, or no distributor gear named.</summary>
    None,
}

public sealed record GearAdvice(GearVerdict Verdict, string Reason);

/// <summary>One of the owner's rules as it bears on a cam and a blank.</summary>
/// <param name="Rule">The rule's key, such as lifter/steel1055/solidRoller.</param>
public sealed record RuleAdvice(string Rule, RuleVerdict Verdict, string Reason);

/// <summary>What one blank can do for the grind. Lengths in inches; base circles are diameters; null where the lobe does not come out at all.</summary>
public sealed record BlankFit
{
    public required string PartNumber { get; init; }

    /// <summary>At least one blank that is not promised to a job.</summary>
    public required bool InStock { get; init; }

    /// <summary>Metal, case, family, firing order and lifter all allow it. The distributor gear is judged apart, in <see cref="Gear"/>.</summary>
    public required bool Fits { get; init; }

    /// <summary>The lot it was judged for, where that measures less than the catalog says; null where the catalog's figures hold.</summary>
    public string? Lot { get; init; }

    /// <summary>Stock and case of that lot.</summary>
    public LotMetal? Metal { get; init; }

    public double? IntakeBaseCircleDiameterIn { get; init; }

    public double? ExhaustBaseCircleDiameterIn { get; init; }

    /// <summary>One base circle on which both lobes can be ground from this blank; null where one of them would leave its case on it.</summary>
    public double? CommonBaseCircleDiameterIn { get; init; }

    public double? MinRemovalIn { get; init; }

    public double? MaxRemovalIn { get; init; }

    /// <summary>Null where the blank has no case that ends.</summary>
    public double? LeastCaseLeftIn { get; init; }

    /// <summary>By how much the intake lobe is turned against the blank's, cam degrees.</summary>
    public double IntakeTurnCamDeg { get; init; }

    public double ExhaustTurnCamDeg { get; init; }

    public required bool NeedsHeatTreat { get; init; }

    public required int LeadTimeDays { get; init; }

    public required GearAdvice Gear { get; init; }

    /// <summary>What the owner's rules say to mind about this cam on this blank, apart from the gear; empty where it does not fit.</summary>
    public IReadOnlyList<RuleAdvice> Cautions { get; init; } = [];

    /// <summary>Why, in plain words: what stands against it, or what it costs.</summary>
    public required IReadOnlyList<string> Reasons { get; init; }

    /// <summary>Fits, and the distributor gear named does not forbid it.</summary>
    public bool Usable => Fits && Gear.Verdict != GearVerdict.No;

    /// <summary>What is free for this cam, by its metal: of that moment, and not kept with the answer.</summary>
    [JsonIgnore]
    public IReadOnlyList<FreeMetal> Free { get; init; } = [];

    /// <summary>Blanks that may be promised to this cam: those of thinner lots from which it does not come out are not among them.</summary>
    [JsonIgnore]
    public int Available => Free.Sum(metal => metal.Blanks);
}

/// <summary>The shop's answer to a complete specification: the verdict, why, and every blank of the family, best first.</summary>
public sealed record FeasibilityAnswer
{
    public required Verdict Verdict { get; init; }

    public required IReadOnlyList<string> Reasons { get; init; }

    public required IReadOnlyList<BlankFit> Blanks { get; init; }

    /// <summary>The complete specification that was judged, blanks filled by the shop.</summary>
    public required GrindSpec Grind { get; init; }

    /// <summary>Null where the blank can become the cam that was judged; otherwise why nothing may be promised on it.</summary>
    public static Refusal? Refuse(FeasibilityAnswer? answer, string partNumber) => answer?.Blanks.FirstOrDefault(blank => blank.PartNumber == partNumber) switch
    {
        null => new Refusal("notJudged", $"Blank {partNumber} was not judged for this order."),
        { Usable: false } fit => new Refusal("doesNotFit", $"Blank {partNumber} cannot become this cam: {(fit.Fits ? fit.Gear.Reason : fit.Reasons[0])}"),
        _ => null,
    };

    public BlankFit? Best => Blanks.FirstOrDefault(blank => blank.Usable);
}
