namespace GrindShop.Lobes;

/// <summary>A sense of turning, seen from the front (the driven end) of the cam.</summary>
public enum Rotation
{
    Clockwise,
    CounterClockwise,
}

public static class Rotations
{
    /// <summary>An angle counted clockwise seen from the front, counted in the sense <paramref name="sense"/> instead.</summary>
    internal static CamDegrees FromClockwise(this Rotation sense, double clockwiseDeg)
    {
        var angle = CamDegrees.FromDegrees(clockwiseDeg);
        return sense == Rotation.Clockwise ? angle : -angle;
    }

    public static Rotation Opposite(this Rotation sense) =>
        sense == Rotation.Clockwise ? Rotation.CounterClockwise : Rotation.Clockwise;
}
