namespace GrindShop.Lobes;

/// <summary>Allowed turns of a lobe, cam degrees.</summary>
public readonly record struct TurnRange(double MinCamDeg, double MaxCamDeg)
{
    /// <summary>Turns within this of an end count as inside, cam degrees.</summary>
    public const double ToleranceCamDeg = 1e-6;

    public bool Contains(double turnCamDeg) => turnCamDeg >= MinCamDeg - ToleranceCamDeg && turnCamDeg <= MaxCamDeg + ToleranceCamDeg;

    /// <summary>The same range seen the other way round.</summary>
    public TurnRange Reversed() => new(-MaxCamDeg, -MinCamDeg);
}
