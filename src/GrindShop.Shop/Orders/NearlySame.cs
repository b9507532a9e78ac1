using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>Is this cam most likely one that was asked for already? Pure.</summary>
public static class NearlySame
{
    /// <summary>How far two figures of the same cam may lie apart when they are said twice.</summary>
    private const double Degrees = 2, LiftIn = .006;

    /// <summary>Two figures at the least must be given in both, and none of those given in both may differ.</summary>
    public static bool Is(CamSpec one, CamSpec other)
    {
        var figures = Figures(one, other).Where(figure => figure.One is not null && figure.Other is not null).ToList();
        return figures.Count >= 2
            && figures.All(figure => Math.Abs(figure.One!.Value - figure.Other!.Value) <= figure.Apart)
            && Agree(one.EngineFamily, other.EngineFamily) && Agree(one.Lifter, other.Lifter) && Agree(one.Side, other.Side);
    }

    private static bool Agree<T>(T? one, T? other) => one is null || other is null || one.Equals(other);

    private static IEnumerable<(double? One, double? Other, double Apart)> Figures(CamSpec one, CamSpec other) =>
    [
        .. Lobe(one.Intake, other.Intake),
        .. Lobe(one.Exhaust, other.Exhaust),
        (one.LobeSeparationCamDeg, other.LobeSeparationCamDeg, Degrees),
        (one.IntakeCenterlineCrankDeg, other.IntakeCenterlineCrankDeg, Degrees),
    ];

    private static IEnumerable<(double?, double?, double)> Lobe(LobeWish one, LobeWish other) =>
    [
        (one.DurationAt050CrankDeg, other.DurationAt050CrankDeg, Degrees),
        (one.AdvertisedDurationCrankDeg, other.AdvertisedDurationCrankDeg, Degrees),
        (one.LobeLiftIn, other.LobeLiftIn, LiftIn),
        (one.ValveLiftIn, other.ValveLiftIn, LiftIn),
    ];
}
