using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>A specification near the wish that does come out of a blank.</summary>
public sealed record NearestGrind
{
    /// <summary>The specification offered, rounded to what a shop writes.</summary>
    public required GrindSpec Grind { get; init; }

    /// <summary>What the blank that it stands on can do for it; always usable.</summary>
    public required BlankFit Fit { get; init; }

    /// <summary>What differs from the wish, in plain words with figures.</summary>
    public required IReadOnlyList<string> GivenUp { get; init; }

    /// <summary>How far it is from the wish by <see cref="GrindDistance"/>; comparable between offers for one wish.</summary>
    public required double Cost { get; init; }
}
