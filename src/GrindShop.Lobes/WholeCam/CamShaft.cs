namespace GrindShop.Lobes;

public enum ValveKind
{
    Intake,
    Exhaust,
}

/// <summary>A lobe by the valve it works.</summary>
public readonly record struct LobePlace(int Cylinder, ValveKind Valve);

/// <summary>One shaft of the engine: its lobes front to rear and how it stands and turns.</summary>
public sealed record CamShaft
{
    /// <summary>Sense in which the engine turns the cam.</summary>
    public required Rotation Turns { get; init; }

    /// <summary>The lobes front to rear. A cam of intake lobes alone, or with two like lobes a cylinder, is fine.</summary>
    public required IReadOnlyList<LobePlace> Lobes { get; init; }

    public required double LobeSeparationCamDeg { get; init; }

    public required double IntakeCenterlineCrankDeg { get; init; }

    /// <summary>
    /// Where the dowel or keyway stands, clockwise seen from the front from the reference of the lifter axes, when the first
    /// cylinder of the firing order is at its overlap top dead centre. Add 180 to a figure read at its firing top dead centre.
    /// </summary>
    public double DatumClockwiseDeg { get; init; }

    /// <summary>The only bank that this cam serves, where each bank has its own; null when it serves all.</summary>
    public string? OnlyBank { get; init; }

    /// <summary>Sense in which the grinder's work head turns the cam between lobes, seen from the cam's front.</summary>
    public Rotation WorkHeadTurns { get; init; }
}
