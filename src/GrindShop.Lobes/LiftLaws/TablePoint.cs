namespace GrindShop.Lobes;

/// <summary>A reading or table row: cam degree by any zero, lift in inches.</summary>
public readonly record struct TablePoint(double CamDeg, double LiftIn);
