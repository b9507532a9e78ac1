namespace GrindShop.Lobes;

public enum SourceKind
{
    /// <summary>Published and looked up.</summary>
    Book,

    /// <summary>Recalled from the named publication, not looked up again.</summary>
    Memory,

    /// <summary>Common practice of the trade; no published source.</summary>
    CommonPractice,
}

/// <summary>Where a figure comes from, to be shown beside it.</summary>
public sealed record Source(SourceKind Kind, string Citation);

/// <summary>A range of a material property and where it comes from.</summary>
public sealed record SourcedRange(double Least, double Most, Source Source);
