namespace GrindShop.Lobes;

/// <summary>The hardness down to which a case counts as deep; two criteria give two depths for one case.</summary>
/// <param name="Limit">Limit hardness.</param>
/// <param name="Source">The standard it comes from.</param>
public sealed record CaseLimit(HardnessReading Limit, Source Source)
{
    /// <summary>550 HV, about 52.3 HRC.</summary>
    public static CaseLimit Iso18203 { get; } = new(
        new(550, HardnessScale.Hv), new(SourceKind.Book, "ISO 18203, to 550 HV"));

    /// <summary>Carburized steel: 50 HRC.</summary>
    public static CaseLimit SaeCarburized { get; } = new(
        new(50, HardnessScale.Hrc), new(SourceKind.Book, "SAE J423, carburized, to 50 HRC"));

    /// <summary>Least carbon, percent by mass, for which an induction limit is laid down.</summary>
    public const double LeastInductionCarbonPercent = 0.33;

    /// <summary>Induction-hardened steel by its carbon: from .33 % 40 HRC, from .43 % 45, from .53 % 50; null below .33 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="carbonPercent"/> is outside 0-2.5.</exception>
    public static CaseLimit? Induction(double carbonPercent) => Require.Within(carbonPercent, 0, 2.5) switch
    {
        < LeastInductionCarbonPercent => null,
        < 0.43 => Hardened(40),
        < 0.53 => Hardened(45),
        _ => Hardened(50),
    };

    private static CaseLimit Hardened(double hrc) => new(
        new(hrc, HardnessScale.Hrc), new(SourceKind.Memory, "SAE J423, induction hardened, by carbon content"));
}
