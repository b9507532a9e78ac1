using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Tests.Specs;

/// <summary>A number of the specification: its path, the range the shop takes seriously, and how it is set.</summary>
internal sealed record NumberField(string Path, FieldRange Range, Func<CamSpec, double?, CamSpec> With)
{
    public static readonly IReadOnlyList<NumberField> All =
    [
        new("followerDiameterIn", FieldRange.FollowerDiameter, (spec, value) => spec with { FollowerDiameterIn = value }),
        new("rockerRatio", FieldRange.RockerRatio, (spec, value) => spec with { RockerRatio = value }),
        new("lobeSeparationCamDeg", FieldRange.LobeSeparation, (spec, value) => spec with { LobeSeparationCamDeg = value }),
        new("intakeCenterlineCrankDeg", FieldRange.IntakeCenterline, (spec, value) => spec with { IntakeCenterlineCrankDeg = value }),
        new("advanceCrankDeg", FieldRange.Advance, (spec, value) => spec with { AdvanceCrankDeg = value }),
        new("maxBaseCircleDiameterIn", FieldRange.MaxBaseCircle, (spec, value) => spec with { MaxBaseCircleDiameterIn = value }),
        .. Lobe("intake", (spec, change) => spec with { Intake = change(spec.Intake) }),
        .. Lobe("exhaust", (spec, change) => spec with { Exhaust = change(spec.Exhaust) }),
    ];

    public static NumberField Of(string path) => All.Single(field => field.Path == path);

    public override string ToString() => Path;

    private static IEnumerable<NumberField> Lobe(string lobe, Func<CamSpec, Func<LobeWish, LobeWish>, CamSpec> change) =>
    [
        new($"{lobe}.lobeLiftIn", FieldRange.LobeLift, (spec, value) => change(spec, wish => wish with { LobeLiftIn = value })),
        new($"{lobe}.valveLiftIn", FieldRange.ValveLift, (spec, value) => change(spec, wish => wish with { ValveLiftIn = value })),
        new($"{lobe}.durationAt050CrankDeg", FieldRange.DurationAt050, (spec, value) => change(spec, wish => wish with { DurationAt050CrankDeg = value })),
        new($"{lobe}.advertisedDurationCrankDeg", FieldRange.Advertised, (spec, value) => change(spec, wish => wish with { AdvertisedDurationCrankDeg = value })),
        new($"{lobe}.advertisedAtIn", FieldRange.AdvertisedAt, (spec, value) => change(spec, wish => wish with { AdvertisedAtIn = value })),
        new($"{lobe}.lashIn", FieldRange.Lash, (spec, value) => change(spec, wish => wish with { LashIn = value })),
    ];
}
