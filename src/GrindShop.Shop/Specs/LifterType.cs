using GrindShop.Lobes;

namespace GrindShop.Shop.Specs;

public enum LifterType
{
    HydraulicRoller,
    SolidRoller,
    HydraulicFlat,
    SolidFlat,
}

public static class LifterTypes
{
    public static bool IsRoller(this LifterType lifter) => lifter is LifterType.HydraulicRoller or LifterType.SolidRoller;

    public static bool IsSolid(this LifterType lifter) => lifter is LifterType.SolidRoller or LifterType.SolidFlat;

    public static FollowerKind FollowerKind(this LifterType lifter) => lifter.IsRoller() ? Lobes.FollowerKind.Roller : Lobes.FollowerKind.Flat;

    /// <summary>The lift at which the advertised duration is usually counted: .006 in hydraulic, .020 in solid (common practice).</summary>
    public static double AdvertisedAtIn(this LifterType lifter) => lifter.IsSolid() ? .020 : .006;

    public static string Words(this LifterType lifter) => lifter switch
    {
        LifterType.HydraulicRoller => "hydraulic roller",
        LifterType.SolidRoller => "solid roller",
        LifterType.HydraulicFlat => "hydraulic flat tappet",
        _ => "solid flat tappet",
    };
}
