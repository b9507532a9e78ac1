namespace GrindShop.Lobes;

/// <summary>Young's modulus and Poisson's ratio of a material.</summary>
/// <param name="ModulusPsi">Where a range is published, its stiff end: it gives the higher pressure.</param>
/// <param name="Poisson">Poisson's ratio.</param>
/// <param name="Modulus">The published range, psi.</param>
/// <param name="PoissonSource">Where the ratio comes from.</param>
public sealed record ElasticConstants(double ModulusPsi, double Poisson, SourcedRange Modulus, Source PoissonSource)
{
    /// <summary>E 207 GPa, v .292.</summary>
    public static ElasticConstants Steel { get; } = Between(
        207, 207, new(SourceKind.Memory, "Shigley, Mechanical Engineering Design"),
        0.292, new(SourceKind.Memory, "Shigley, Mechanical Engineering Design"));

    /// <summary>E 165-169 GPa, v .275; stands in for its austempered grades.</summary>
    public static ElasticConstants DuctileIron { get; } = Between(
        165, 169, new(SourceKind.Book, "Callister, Materials Science and Engineering, appendix B"),
        0.275, new(SourceKind.Memory, "ductile iron handbooks"));

    /// <summary>Grade G4000: E 110-138 GPa, v .21-.26, here .235.</summary>
    public static ElasticConstants GrayIron { get; } = Between(
        110, 138, new(SourceKind.Book, "Callister, Materials Science and Engineering, appendix B, grade G4000"),
        0.235, new(SourceKind.Memory, "middle of .21-.26"));

    public static ElasticConstants Of(CamAlloy alloy) => alloy switch
    {
        CamAlloy.HardenableGrayIron => GrayIron,
        CamAlloy.AustemperedDuctileIron => DuctileIron,
        _ => Steel,
    };

    private static ElasticConstants Between(double leastGpa, double mostGpa, Source modulus, double poisson, Source poissonSource)
    {
        var range = new SourcedRange(Si.PsiFromGigapascals(leastGpa), Si.PsiFromGigapascals(mostGpa), modulus);
        return new(range.Most, poisson, range, poissonSource);
    }
}
