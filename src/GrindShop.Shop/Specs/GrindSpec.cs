using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;

namespace GrindShop.Shop.Specs;

/// <summary>A complete, checked specification: everything the geometry needs.</summary>
public sealed record GrindSpec
{
    public required string EngineFamily { get; init; }

    public CamSide? Side { get; init; }

    public required LifterType Lifter { get; init; }

    /// <summary>Roller diameter or foot diameter, in.</summary>
    public required double FollowerDiameterIn { get; init; }

    public required LobeSpec Intake { get; init; }

    public required LobeSpec Exhaust { get; init; }

    public required double RockerRatio { get; init; }

    public required double LobeSeparationCamDeg { get; init; }

    public required double IntakeCenterlineCrankDeg { get; init; }

    public double IntakeLashIn { get; init; }

    public double ExhaustLashIn { get; init; }

    public DistributorGear? DistributorGear { get; init; }

    /// <summary>Whether a mechanical fuel pump is run; null where nobody said.</summary>
    public bool? MechanicalFuelPump { get; init; }

    public double? MaxBaseCircleDiameterIn { get; init; }

    public required string FiringOrder { get; init; }

    public double ExhaustCenterlineCrankDeg => 2 * LobeSeparationCamDeg - IntakeCenterlineCrankDeg;

    public double AdvanceCrankDeg => LobeSeparationCamDeg - IntakeCenterlineCrankDeg;

    public Follower Follower() => Lifter.IsRoller() ? Lobes.Follower.Roller(FollowerDiameterIn / 2) : Lobes.Follower.Flat;
}

/// <summary>A field that the customer left empty and the shop filled, with the reason.</summary>
public sealed record FilledField(string Field, string Value, string Why);

/// <summary>What is wrong with a field: its path, a sentence that names it, and the allowed range where there is one.</summary>
public sealed record FieldProblem(string Field, string Message, double? Least = null, double? Most = null);
