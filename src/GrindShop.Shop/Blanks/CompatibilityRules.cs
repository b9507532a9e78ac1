using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Blanks;

public enum RuleVerdict
{
    Ok,
    Caution,
    No,
}

/// <summary>May this cam gear run with that distributor gear? The owner's table, each cell with its reason in words.</summary>
public sealed class GearRule
{
    public int Id { get; private set; }

    public required CamGear CamGear { get; init; }

    public required DistributorGear DistributorGear { get; init; }

    public required RuleVerdict Verdict { get; set; }

    public required string Reason { get; set; }
}

/// <summary>May this kind of lifter run on a lobe of that alloy? The owner's table, each cell with its reason in words.</summary>
public sealed class LifterRule
{
    public int Id { get; private set; }

    public required BlankAlloy Alloy { get; init; }

    public required LifterType Lifter { get; init; }

    public required RuleVerdict Verdict { get; set; }

    public required string Reason { get; set; }
}
