using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Starting;

/// <summary>A row of a table by crank speed; between two rows the duration runs straight, beyond the last it stays.</summary>
/// <param name="CrankDeg">Intake duration at .050.</param>
public sealed record RpmRow(double Rpm, double CrankDeg);

/// <param name="LongerCrankDeg">Added to the intake duration.</param>
/// <param name="ExhaustLongerCrankDeg">By how much the exhaust lobe is longer than the intake.</param>
/// <param name="SeparationCamDeg">Added to the family's usual lobe separation.</param>
/// <param name="AdvanceCrankDeg">Added to the family's usual advance.</param>
/// <param name="Why">The reason, as the customer reads it.</param>
public sealed record UseRow(StartUse Use, double LongerCrankDeg, double ExhaustLongerCrankDeg, double SeparationCamDeg, double AdvanceCrankDeg, string Why);

public sealed record IdleRow(IdleWish Idle, double LongerCrankDeg, double SeparationCamDeg, string Why);

/// <param name="LiftAt220In">Lobe lift that goes with 220 crank degrees at .050, in.</param>
/// <param name="LiftPerDegreeIn">More lift with each further degree, in.</param>
public sealed record LifterRow(LifterType Lifter, double LongerCrankDeg, double LiftAt220In, double LiftPerDegreeIn, string Why);

/// <param name="UsualCubicInches">The cylinder that the speed table is written for.</param>
/// <param name="LongerPerTenCrankDeg">Longer duration with each ten cubic inches more.</param>
public sealed record CylinderRow(double UsualCubicInches, double LongerPerTenCrankDeg);

/// <param name="LiftPercent">Share of the usual lobe lift that is ground for this family.</param>
public sealed record FamilyRow(string EngineFamily, double LiftPercent);

/// <summary>
/// The shop's own rules of thumb from which a starting specification is worked out; data of the owner, no law of nature.
/// Immutable: a change is a new set (<see cref="StartRuleSet"/>).
/// </summary>
public sealed record StartRules
{
    /// <summary>Intake duration by the highest speed at which the engine should pull.</summary>
    public required IReadOnlyList<RpmRow> Top { get; init; }

    /// <summary>Longest intake duration by the speed from which it should pull.</summary>
    public required IReadOnlyList<RpmRow> Low { get; init; }

    public required CylinderRow Cylinder { get; init; }

    public required IReadOnlyList<UseRow> Uses { get; init; }

    public required IReadOnlyList<IdleRow> Idles { get; init; }

    public required IReadOnlyList<LifterRow> Lifters { get; init; }

    /// <summary>Families whose lobes are lower or higher than usual; any other takes 100 percent.</summary>
    public IReadOnlyList<FamilyRow> Families { get; init; } = [];

    /// <summary>A plain set to begin with in a shop that has none: duration grows evenly with speed and nothing else changes it.</summary>
    public static StartRules Plain { get; } = new()
    {
        Top = [.. Enumerable.Range(0, 8).Select(row => new RpmRow(4000 + 1000 * row, 200 + 15 * row))],
        Low = [.. Enumerable.Range(0, 6).Select(row => new RpmRow(1000 + 1000 * row, 220 + 16 * row))],
        Cylinder = new CylinderRow(44, 0),
        Uses = [.. Enum.GetValues<StartUse>().Select(use => new UseRow(use, 0, 0, 0, 0, ""))],
        Idles = [.. Enum.GetValues<IdleWish>().Select(idle => new IdleRow(idle, 0, 0, ""))],
        Lifters = [.. Enum.GetValues<LifterType>().Select(lifter => new LifterRow(lifter, 0, .310, .0015, ""))],
    };

    /// <summary>The same with a row for each of these families.</summary>
    public StartRules ForFamilies(IEnumerable<string> codes) =>
        this with { Families = [.. codes.Select(code => new FamilyRow(code, LiftPercent(code)))] };

    public double LiftPercent(string family) => Families.FirstOrDefault(row => row.EngineFamily == family)?.LiftPercent ?? 100;

    /// <summary>Straight between the rows of a table, level beyond its ends.</summary>
    public static double Read(IReadOnlyList<RpmRow> table, double rpm)
    {
        var above = table.FirstOrDefault(row => row.Rpm >= rpm) ?? table[^1];
        var below = table.LastOrDefault(row => row.Rpm <= rpm) ?? table[0];
        return above.Rpm <= below.Rpm ? above.CrankDeg : below.CrankDeg + (above.CrankDeg - below.CrankDeg) * (rpm - below.Rpm) / (above.Rpm - below.Rpm);
    }
}
