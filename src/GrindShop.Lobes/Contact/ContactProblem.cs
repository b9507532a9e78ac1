using System.Globalization;

namespace GrindShop.Lobes;

/// <summary>Why there is no line contact to compute; <see cref="object.ToString"/> says it in words.</summary>
public abstract record ContactProblem
{
    private ContactProblem()
    {
    }

    /// <summary>Neither body is curved: there is no line.</summary>
    public sealed record BothFlat : ContactProblem
    {
        public override string ToString() => "Both bodies are flat: they touch on a face, not along a line.";
    }

    /// <summary>A concave flank no wider than the roller: it touches at two edges or fills the flank.</summary>
    public sealed record Conforming(double ConcaveRadiusIn, double OtherRadiusIn) : ContactProblem
    {
        public override string ToString() => string.Create(
            CultureInfo.InvariantCulture,
            $"The concave radius {ConcaveRadiusIn:0.####} in is not larger than the radius {OtherRadiusIn:0.####} in that runs in it.");
    }

    /// <summary>A concave flank against a flat or another concave one.</summary>
    public sealed record CannotReach(double ConcaveRadiusIn) : ContactProblem
    {
        public override string ToString() => string.Create(
            CultureInfo.InvariantCulture, $"Only a convex body reaches into the concave radius {ConcaveRadiusIn:0.####} in.");
    }

    /// <summary>Inertia is greater than the spring holds: the follower has left the lobe.</summary>
    public sealed record ContactLost(double MissingLbf) : ContactProblem
    {
        public override string ToString() => string.Create(
            CultureInfo.InvariantCulture, $"The follower leaves the lobe; {MissingLbf:0.#} lbf are lacking at the lobe.");
    }

    internal static ContactProblem? OfRadii(double? radius1In, double? radius2In)
    {
        if (radius1In is null && radius2In is null)
            return new BothFlat();
        var (concave, other) = radius1In < 0 ? (radius1In, radius2In) : (radius2In, radius1In);
        if (concave is not < 0)
            return null;
        if (other is not > 0)
            return new CannotReach(-concave.Value);
        return -concave.Value > other.Value ? null : new Conforming(-concave.Value, other.Value);
    }
}
