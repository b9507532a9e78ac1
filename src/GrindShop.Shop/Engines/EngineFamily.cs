namespace GrindShop.Shop.Engines;

public enum EngineKind
{
    PushrodV,
    PushrodInline,
    OverheadCamV,
    OverheadCamInline,
}

public enum GearPosition
{
    /// <summary>No distributor: the gear table does not apply.</summary>
    None,
    Front,
    Rear,
}

public enum CamRotation
{
    Clockwise,
    CounterClockwise,
}

public enum CamDatum
{
    Dowel,
    Keyway,
}

public enum CamSide
{
    Left,
    Right,
}

/// <summary>Everything about an engine that decides what its camshaft may be.</summary>
public sealed class EngineFamily
{
    public int Id { get; private set; }

    public required string Code { get; init; }

    public required string Name { get; init; }

    public required EngineKind Kind { get; init; }

    public required int Cylinders { get; init; }

    public required string FiringOrder { get; init; }

    /// <summary>Other orders that are ground for this family, by a blank milled for them or a full-round one.</summary>
    public string[] OtherFiringOrders { get; init; } = [];

    /// <summary>Crank degrees between one firing and the next; empty means even fire, 720 / cylinders.</summary>
    public double[] FiringIntervalsCrankDeg { get; init; } = [];

    /// <summary>Included angle between the cylinder banks, degrees; 0 for an in-line engine.</summary>
    public double BankAngleDeg { get; init; }

    /// <summary>Included angle between the lifter axes of the two banks, degrees.</summary>
    public double LifterBankAngleDeg { get; init; }

    /// <summary>Bank (0 left, 1 right) of cylinder 1, 2, ...; all 0 for an in-line engine.</summary>
    public int[] BankOfCylinder { get; init; } = [];

    /// <summary>Lobes from the front of the shaft, such as "1E 1I 2I 2E"; engines with two cams: both banks in one list.</summary>
    public required string ValveOrder { get; init; }

    /// <summary>The engine has a left and a right cam, each for the cylinders of its bank.</summary>
    public bool HasSides { get; init; }

    public required CamRotation Rotation { get; init; }

    public required CamDatum Datum { get; init; }

    /// <summary>Angle of the datum from the axis of cylinder 1's lifter with cylinder 1 at overlap top dead centre, cam degrees in the sense of rotation.</summary>
    public double DatumAngleCamDeg { get; init; }

    public required GearPosition Gear { get; init; }

    /// <summary>Journal diameters from the front, in.</summary>
    public required double[] JournalDiametersIn { get; init; }

    /// <summary>The cam slides through its bearing bores, so that every nose must pass the smallest journal.</summary>
    public bool NosePassesBores { get; init; } = true;

    /// <summary>Room between nose and bore on the diameter, in.</summary>
    public double NoseClearanceIn { get; init; }

    /// <summary>Smallest base circle that leaves the barrel and the lifter's reach in order, in.</summary>
    public required double LeastBaseCircleIn { get; init; }

    public required double UsualBaseCircleIn { get; init; }

    public required double RockerRatio { get; init; }

    public required double RollerDiameterIn { get; init; }

    public required double FootDiameterIn { get; init; }

    public required double LobeWidthIn { get; init; }

    public required double UsualLobeSeparationCamDeg { get; init; }

    public required double UsualAdvanceCrankDeg { get; init; }

    public bool FuelPumpLobe { get; init; }

    public string Notes { get; init; } = "";

    public bool IsFiringOrder(string text) => Lobes.FiringOrder.Parse(text, Cylinders).Succeeded;

    /// <summary>Are these two orders the same firing sequence, wherever each starts?</summary>
    public bool SameSequence(string one, string other) =>
        Lobes.FiringOrder.Parse(one, Cylinders).Value is { } a && Lobes.FiringOrder.Parse(other, Cylinders).Value is { } b && a.SameSequenceAs(b);

    /// <summary>Largest base circle with which a nose of this lift still passes the bearing bores, in, 0 when none does; null where the cam is laid in under caps.</summary>
    public double? BoreLimitIn(double lobeLiftIn) =>
        NosePassesBores ? Lobes.BearingBore.MaxBaseCircleDiameterIn(JournalDiametersIn.Min(), lobeLiftIn, NoseClearanceIn) : null;
}
