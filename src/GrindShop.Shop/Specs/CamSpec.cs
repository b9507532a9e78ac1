using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;

namespace GrindShop.Shop.Specs;

/// <summary>One lobe as the customer knows it; a blank (null) field is one the customer does not know.</summary>
public sealed record LobeWish
{
    /// <summary>Rise of the lifter, in.</summary>
    public double? LobeLiftIn { get; init; }

    /// <summary>Rise of the valve at zero lash (lobe lift x rocker ratio), in; an alternative to the lobe lift.</summary>
    public double? ValveLiftIn { get; init; }

    /// <summary>Duration at .050 in lifter lift, crank degrees.</summary>
    public double? DurationAt050CrankDeg { get; init; }

    /// <summary>Advertised duration, crank degrees.</summary>
    public double? AdvertisedDurationCrankDeg { get; init; }

    /// <summary>Lifter lift at which the advertised duration is counted, in.</summary>
    public double? AdvertisedAtIn { get; init; }

    /// <summary>Valve lash, in; solid lifters only.</summary>
    public double? LashIn { get; init; }
}

/// <summary>The cam a customer describes: complete or not, kept exactly as it was given. <see cref="SpecCompletion"/> fills the blanks.</summary>
public sealed record CamSpec
{
    public string? EngineFamily { get; init; }

    /// <summary>Which cam of an engine that has a left and a right one.</summary>
    public CamSide? Side { get; init; }

    public LifterType? Lifter { get; init; }

    /// <summary>Diameter of the roller, or of the foot of a flat tappet, in.</summary>
    public double? FollowerDiameterIn { get; init; }

    public LobeWish Intake { get; init; } = new();

    /// <summary>Wholly blank means: like the intake lobe.</summary>
    public LobeWish Exhaust { get; init; } = new();

    public double? RockerRatio { get; init; }

    public double? LobeSeparationCamDeg { get; init; }

    public double? IntakeCenterlineCrankDeg { get; init; }

    /// <summary>Lobe separation less intake centreline; an alternative to the centreline.</summary>
    public double? AdvanceCrankDeg { get; init; }

    public DistributorGear? DistributorGear { get; init; }

    /// <summary>Whether the engine runs a mechanical fuel pump, driven by a lobe of its own on the cam; null where nobody said.</summary>
    public bool? MechanicalFuelPump { get; init; }

    /// <summary>The largest base circle the engine leaves room for (rod clearance), in.</summary>
    public double? MaxBaseCircleDiameterIn { get; init; }

    /// <summary>Firing order such as 1-8-4-3-6-5-7-2; blank means the family's usual one.</summary>
    public string? FiringOrder { get; init; }

    public string? Use { get; init; }

    public string? Notes { get; init; }
}
