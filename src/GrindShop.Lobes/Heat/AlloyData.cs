namespace GrindShop.Lobes;

/// <summary>How a blank of an alloy gets its hard surface.</summary>
public enum AlloyHardening
{
    FlameOrChill,
    Through,
    Induction,
    Carburized,
    SpecialOrder,
}

/// <summary>A range of hardness on one scale, to inspect against.</summary>
/// <param name="Scale">The scale of both ends.</param>
/// <param name="Least">Least hardness.</param>
/// <param name="Most">Greatest hardness; null where only the least is given.</param>
/// <param name="Source">Where the window comes from.</param>
public sealed record HardnessWindow(HardnessScale Scale, double Least, double? Most, Source Source)
{
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is no hardness: outside 0-3000.</exception>
    public bool Holds(double value) => Require.Within(value, 0, 3_000) >= Least && !(value > Most);
}

/// <summary>What is known of a blank alloy; a null says that no figure was found, not that none exists.</summary>
/// <param name="Alloy">The alloy.</param>
/// <param name="Name">Its name on papers.</param>
/// <param name="Hardening">How its surface is hardened.</param>
/// <param name="CarbonPercent">Carbon, percent by mass.</param>
/// <param name="Lobe">Hardness of a finished lobe.</param>
public sealed record AlloyData(
    CamAlloy Alloy, string Name, AlloyHardening Hardening, SourcedRange? CarbonPercent, HardnessWindow? Lobe)
{
    private static readonly Source Carbon = new(SourceKind.Book, "SAE J403");
    private static readonly Source CarbonRecalled = new(SourceKind.Memory, "SAE J404");
    private static readonly Source Custom = new(SourceKind.CommonPractice, "usual in the trade");
    private static readonly HardnessWindow CarburizedLobe = new(HardnessScale.Hrc, 58, 62, Custom);

    // Usually about 55.
    private static readonly HardnessWindow IronLobe = new(HardnessScale.Hrc, 50, null, Custom);

    public static IReadOnlyList<AlloyData> All { get; } =
    [
        new(CamAlloy.HardenableGrayIron, "Hardenable gray iron", AlloyHardening.FlameOrChill, null, IronLobe),
        new(CamAlloy.AustemperedDuctileIron, "Austempered ductile iron", AlloyHardening.Through, null, null),
        new(CamAlloy.Sae1050, "SAE 1050 steel", AlloyHardening.Induction, new(.48, .55, Carbon), null),
        new(CamAlloy.Sae1055, "SAE 1055 steel", AlloyHardening.Induction, new(.50, .60, Carbon), null),
        new(CamAlloy.Sae5150, "SAE 5150 steel", AlloyHardening.Induction, new(.48, .53, CarbonRecalled), null),
        new(CamAlloy.Sae5160, "SAE 5160 steel", AlloyHardening.Induction, new(.56, .64, CarbonRecalled), null),
        new(CamAlloy.Sae8620, "SAE 8620 steel", AlloyHardening.Carburized, new(.18, .23, CarbonRecalled), CarburizedLobe),
        new(CamAlloy.Sae8660, "SAE 8660 steel", AlloyHardening.Induction, new(.56, .64, CarbonRecalled), null),
        new(CamAlloy.ToolSteel, "Tool steel", AlloyHardening.SpecialOrder, null, null),
    ];

    public static AlloyData Of(CamAlloy alloy) => All.First(data => data.Alloy == alloy);

    /// <summary>
    /// The criterion for the depth of this alloy's case, by the middle of its carbon range; null where it has no case (hard throughout) or
    /// no criterion is known.
    /// </summary>
    public CaseLimit? CaseLimit => Hardening switch
    {
        AlloyHardening.Carburized => Lobes.CaseLimit.SaeCarburized,
        AlloyHardening.Induction when CarbonPercent is { } carbon => Lobes.CaseLimit.Induction((carbon.Least + carbon.Most) / 2),
        _ => null,
    };
}
