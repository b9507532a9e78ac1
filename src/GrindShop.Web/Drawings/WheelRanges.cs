using GrindShop.Shop.Specs;

namespace GrindShop.Web.Drawings;

/// <summary>Steps, grinding wheels and base circles that the tables and drawings are made for.</summary>
public static class WheelRanges
{
    /// <summary>A new wheel of a cam grinder is about 18 in across (common practice, no source).</summary>
    public const double UsualRadiusIn = 9;

    /// <summary>The same wheel when it is well worn (common practice, no source).</summary>
    public const double WornRadiusIn = 8;

    /// <summary>From one row of a table to the next; the finest keeps the work of one request small.</summary>
    public static readonly FieldRange Step = new("Step", .1, 10, "cam degrees");

    public static readonly FieldRange Radius = new("Wheel radius", .5, 20, "in");

    public static readonly FieldRange BaseCircle = new("Base circle", .4, 3, "in, diameter");

    /// <summary>The base circle to set, in: the thousandth below one that was computed, whose own accuracy is .0003 in.</summary>
    public static double ToSetIn(double computedIn) => Math.Floor((computedIn - .0003) * 1000) / 1000;
}
