using GrindShop.Shop.Specs;

namespace GrindShop.Web.Public;

/// <summary>A number of the specification as a field of a form: where it belongs, how it is named and explained.</summary>
/// <param name="Path">Path in the specification's JSON, the one that field problems name.</param>
/// <param name="Id">Id of the input.</param>
/// <param name="Hint">One plain sentence.</param>
public sealed record NumberField(string Path, string Id, FieldRange Range, string Hint, Func<CamSpec, double?> Get, Func<CamSpec, double?, CamSpec> Set)
{
    public static readonly NumberField FollowerDiameter = new("followerDiameterIn", "follower-diameter", FieldRange.FollowerDiameter,
        "Of the roller, or of the foot of a flat tappet.", spec => spec.FollowerDiameterIn, (spec, value) => spec with { FollowerDiameterIn = value });

    public static readonly NumberField RockerRatio = new("rockerRatio", "rocker-ratio", FieldRange.RockerRatio,
        "Valve lift over lobe lift.", spec => spec.RockerRatio, (spec, value) => spec with { RockerRatio = value });

    public static readonly NumberField LobeSeparation = new("lobeSeparationCamDeg", "lsa", FieldRange.LobeSeparation,
        "Angle between the intake and exhaust lobe centres.", spec => spec.LobeSeparationCamDeg, (spec, value) => spec with { LobeSeparationCamDeg = value });

    public static readonly NumberField IntakeCenterline = new("intakeCenterlineCrankDeg", "icl", FieldRange.IntakeCenterline,
        "Intake lobe centre after top dead centre.", spec => spec.IntakeCenterlineCrankDeg, (spec, value) => spec with { IntakeCenterlineCrankDeg = value });

    public static readonly NumberField Advance = new("advanceCrankDeg", "advance", FieldRange.Advance,
        "Instead of the centreline: lobe separation less centreline.", spec => spec.AdvanceCrankDeg, (spec, value) => spec with { AdvanceCrankDeg = value });

    public static readonly NumberField BaseCircleLimit = new("maxBaseCircleDiameterIn", "base-circle-limit", FieldRange.MaxBaseCircle,
        "Only if rods or block leave little room: the largest base circle, diameter.", spec => spec.MaxBaseCircleDiameterIn, (spec, value) => spec with { MaxBaseCircleDiameterIn = value });

    public static readonly IReadOnlyList<NumberField> Intake = Lobe("intake", spec => spec.Intake, (spec, lobe) => spec with { Intake = lobe });

    public static readonly IReadOnlyList<NumberField> Exhaust = Lobe("exhaust", spec => spec.Exhaust, (spec, lobe) => spec with { Exhaust = lobe });

    public static IEnumerable<NumberField> All =>
        [FollowerDiameter, RockerRatio, .. Intake, .. Exhaust, LobeSeparation, IntakeCenterline, Advance, BaseCircleLimit];

    /// <summary>Two lobes have the same fields; the lobe is said in the label, so that the label alone tells them apart.</summary>
    public string Label => Path.Split('.') is [var lobe, _]
        ? $"{(lobe == "intake" ? "Intake" : "Exhaust")} {char.ToLowerInvariant(Range.Name[0])}{Range.Name[1..]}"
        : Range.Name;

    /// <summary>Without it nothing can be judged.</summary>
    public bool IsNeeded => Path == "intake.durationAt050CrankDeg";

    /// <summary>Lash is only asked where there is any.</summary>
    public bool IsLash => Range == FieldRange.Lash;

    private static IReadOnlyList<NumberField> Lobe(string name, Func<CamSpec, LobeWish> get, Func<CamSpec, LobeWish, CamSpec> set)
    {
        NumberField Of(string path, string id, FieldRange range, string hint, Func<LobeWish, double?> read, Func<LobeWish, double?, LobeWish> write) =>
            new($"{name}.{path}", $"{name}-{id}", range, hint, spec => read(get(spec)), (spec, value) => set(spec, write(get(spec), value)));
        return
        [
            Of("durationAt050CrankDeg", "duration-050", FieldRange.DurationAt050, "How long the lifter is more than .050 in up.",
                lobe => lobe.DurationAt050CrankDeg, (lobe, value) => lobe with { DurationAt050CrankDeg = value }),
            Of("lobeLiftIn", "lobe-lift", FieldRange.LobeLift, "Rise of the lifter over the base circle.",
                lobe => lobe.LobeLiftIn, (lobe, value) => lobe with { LobeLiftIn = value }),
            Of("valveLiftIn", "valve-lift", FieldRange.ValveLift, "Instead of the lobe lift: lobe lift times rocker ratio, before lash.",
                lobe => lobe.ValveLiftIn, (lobe, value) => lobe with { ValveLiftIn = value }),
            Of("advertisedDurationCrankDeg", "advertised", FieldRange.Advertised, "Counted from a much smaller lift.",
                lobe => lobe.AdvertisedDurationCrankDeg, (lobe, value) => lobe with { AdvertisedDurationCrankDeg = value }),
            Of("advertisedAtIn", "advertised-at", FieldRange.AdvertisedAt, "The lift from which the advertised duration counts.",
                lobe => lobe.AdvertisedAtIn, (lobe, value) => lobe with { AdvertisedAtIn = value }),
            Of("lashIn", "lash", FieldRange.Lash, "Play at the valve with the engine hot, unless the notes say cold.",
                lobe => lobe.LashIn, (lobe, value) => lobe with { LashIn = value }),
        ];
    }
}
