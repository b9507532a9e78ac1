namespace GrindShop.Lobes;

public enum FollowerKind
{
    Roller,
    Flat,
}

/// <summary>What rides on the lobe: an in-line translating roller or flat face (or the grinding wheel, a large roller).</summary>
public readonly record struct Follower
{
    private Follower(FollowerKind kind, double radiusIn) => (Kind, RadiusIn) = (kind, radiusIn);

    public FollowerKind Kind { get; }

    /// <summary>Roller radius, in; 0 for a flat face.</summary>
    public double RadiusIn { get; }

    public static Follower Flat { get; } = new(FollowerKind.Flat, 0);

    /// <param name="radiusIn">Roller radius, .001 to 100 in.</param>
    public static Follower Roller(double radiusIn) =>
        new(FollowerKind.Roller, Require.Within(radiusIn, 1e-3, Require.LargestLengthIn, nameof(radiusIn)));

    /// <summary>Refuses the default value, which is a roller without a radius.</summary>
    internal Follower Checked(string argument) =>
        Kind == FollowerKind.Flat || RadiusIn > 0 ? this : throw new ArgumentOutOfRangeException(argument, "A roller needs a radius.");
}
