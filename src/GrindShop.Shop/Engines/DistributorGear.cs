namespace GrindShop.Shop.Engines;

/// <summary>What the distributor's gear, which runs on the cam's, is made of.</summary>
public enum DistributorGear
{
    Iron,
    NitrocarburizedSteel,
    Bronze,
    PolymerComposite,
}

public static class DistributorGears
{
    public static string Words(this DistributorGear gear) => gear switch
    {
        DistributorGear.Iron => "iron",
        DistributorGear.NitrocarburizedSteel => "nitrocarburized steel",
        DistributorGear.Bronze => "bronze",
        _ => "polymer composite",
    };
}
