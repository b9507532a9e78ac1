namespace GrindShop.Lobes;

/// <summary>A standard grade of iron and its Brinell window, before any hardening of the lobes.</summary>
public sealed record IronGrade(string Name, CamAlloy Alloy, HardnessWindow Body)
{
    private static readonly Source Gray = new(SourceKind.Book, "ASTM A159");
    private static readonly Source GrayRecalled = new(SourceKind.Memory, "ASTM A159, camshaft grade");
    private static readonly Source Austempered = new(SourceKind.Book, "ASTM A897");

    public static IReadOnlyList<IronGrade> All { get; } =
    [
        new("G3500", CamAlloy.HardenableGrayIron, new(HardnessScale.Hbw, 207, 255, Gray)),
        new("G4000", CamAlloy.HardenableGrayIron, new(HardnessScale.Hbw, 217, 269, Gray)),
        new("G4000d", CamAlloy.HardenableGrayIron, new(HardnessScale.Hbw, 241, 321, GrayRecalled)),
        new("150/110/07", CamAlloy.AustemperedDuctileIron, new(HardnessScale.Hbw, 302, 375, Austempered)),
        new("175/125/04", CamAlloy.AustemperedDuctileIron, new(HardnessScale.Hbw, 341, 444, Austempered)),
        new("200/155/02", CamAlloy.AustemperedDuctileIron, new(HardnessScale.Hbw, 388, 477, Austempered)),
    ];
}
