namespace GrindShop.Lobes;

/// <summary>The alloys that cam blanks are made of.</summary>
public enum CamAlloy
{
    HardenableGrayIron,
    AustemperedDuctileIron,
    Sae1050,
    Sae1055,
    Sae5150,
    Sae5160,
    Sae8620,
    Sae8660,
    ToolSteel,
}
