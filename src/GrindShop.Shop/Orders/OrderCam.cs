using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

public enum WorkKind
{
    NewGrind,

    /// <summary>The customer's own used cam is ground again.</summary>
    Regrind,

    /// <summary>A new gear is pressed on a three-piece cam.</summary>
    GearReplacement,
}

/// <summary>One cam of an order, in one or more like pieces: what is to be done, the specification, and the shop's answer as it was on the day.</summary>
public sealed class OrderCam
{
    private OrderCam()
    {
    }

    internal OrderCam(int ordinal, CamEntry entry, FeasibilityAnswer? answer)
    {
        Ordinal = ordinal;
        SetWork(entry);
        Set(entry.Spec, answer);
    }

    public int Id { get; private set; }

    public int OrderId { get; private set; }

    /// <summary>Its place in the order, from 1; never given to another cam.</summary>
    public int Ordinal { get; private set; }

    public WorkKind Kind { get; private set; }

    /// <summary>Pieces wanted; 0 where a revision has taken the cam out of the order, or has not agreed on it yet.</summary>
    public int Quantity { get; internal set; }

    public CamSpec Spec { get; private set; } = new();

    /// <summary>The shop's answer to <see cref="Spec"/> as it was computed when the specification was last set; null while it is incomplete.</summary>
    public FeasibilityAnswer? Answer { get; private set; }

    /// <summary>The verdict of <see cref="Answer"/>, for lists.</summary>
    public Verdict? Verdict { get; private set; }

    /// <summary>The blank the price stands on.</summary>
    public string? QuotedPartNumber { get; internal set; }

    /// <summary>What that blank can do for the grind.</summary>
    public BlankFit? QuotedFit => Answer?.Blanks.FirstOrDefault(fit => fit.PartNumber == QuotedPartNumber);

    /// <summary>How a cam that came in for a repair or a regrind looked; null for a new one.</summary>
    public string? ReceivedCondition { get; private set; }

    /// <summary><see cref="ReceivedCondition"/> is what the customer tells; the cam is not here yet.</summary>
    public bool IsExpected { get; private set; }

    /// <summary>The condition with whose word it is; null for a new cam.</summary>
    public string? ConditionWords => ReceivedCondition is { } condition ? $"{(IsExpected ? "Expected, as the customer tells" : "Came in like this")}: {condition}" : null;

    /// <summary>What was measured on the used cam; null while nobody has.</summary>
    public MeasuredCam? Measured { get; private set; }

    /// <summary>Which cam gets which gear; null for any other work.</summary>
    public GearSwap? Gear { get; private set; }

    /// <summary>What the owner's rules of now say to the gear that is to be pressed on; null for any other work.</summary>
    public GearAdvice? GearAdvice(CatalogContent content) =>
        Gear is { } gear && content.Family(Spec.EngineFamily) is { } family ? gear.Advice(family, Spec.DistributorGear, content.Rules) : null;

    /// <summary>Pieces that have a job.</summary>
    public int Started { get; internal set; }

    public int Shipped { get; internal set; }

    /// <summary>Pieces that still wait for a job.</summary>
    public int Waiting => Quantity - Started;

    /// <summary>A blank of the shop is needed: the customer brings no cam.</summary>
    public bool NeedsBlank => Kind == WorkKind.NewGrind;

    /// <summary>Null where nothing stands against doing it on this blank.</summary>
    internal Refusal? RefuseBlank(string? partNumber) => !NeedsBlank ? Answer is null ? null : FeasibilityAnswer.Refuse(Answer, MeasuredCam.PartNumber)
        : partNumber is null ? new Refusal("notJudged", $"Choose a blank for cam {Ordinal} first.")
        : FeasibilityAnswer.Refuse(Answer, partNumber);

    /// <summary>The cam as it was entered.</summary>
    public CamEntry Entry => new() { Kind = Kind, Quantity = Quantity, Spec = Spec, ReceivedCondition = ReceivedCondition, IsExpected = IsExpected, Measured = Measured, Gear = Gear };

    internal void SetWork(CamEntry entry)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(entry.Quantity);
        (Kind, Quantity) = (entry.Kind, entry.Quantity);
        ReceivedCondition = string.IsNullOrWhiteSpace(entry.ReceivedCondition) ? null : entry.ReceivedCondition.Trim();
        IsExpected = entry.Kind != WorkKind.NewGrind && entry.IsExpected;
        Measured = entry.Kind == WorkKind.Regrind ? entry.Measured : null;
        Gear = entry.Kind == WorkKind.GearReplacement ? entry.Gear : null;
    }

    /// <summary>The cam is here, and looks like this.</summary>
    internal void Receive(string condition) => (ReceivedCondition, IsExpected) = (condition.Trim(), false);

    internal void Set(CamSpec spec, FeasibilityAnswer? answer) => (Spec, Answer, Verdict) = (spec, answer, answer?.Verdict);
}
