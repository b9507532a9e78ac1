using GrindShop.Shop.Blanks;

namespace GrindShop.Shop.Feasibility;

/// <summary>Blanks of one part and one metal that may be promised now, and from which the cam comes out.</summary>
/// <param name="Metal">Stock and case that they may be counted on for.</param>
/// <param name="Blanks">How many.</param>
/// <param name="RemovalIn">What comes off them at most, in.</param>
public sealed record FreeMetal(LotMetal Metal, int Blanks, double RemovalIn);
