namespace GrindShop.Shop.Specs.Entry;

/// <summary>A figure that each of the two lobes has.</summary>
internal sealed record LobeField(string Name, string Words, Func<double, string> Say, Func<LobeWish, double?> Get, Func<LobeWish, double, LobeWish> Set)
{
    public static readonly LobeField At050 = new("durationAt050CrankDeg", "duration at .050", EntrySay.Crank,
        lobe => lobe.DurationAt050CrankDeg, (lobe, value) => lobe with { DurationAt050CrankDeg = value });

    public static readonly LobeField Advertised = new("advertisedDurationCrankDeg", "advertised duration", EntrySay.Crank,
        lobe => lobe.AdvertisedDurationCrankDeg, (lobe, value) => lobe with { AdvertisedDurationCrankDeg = value });

    public static readonly LobeField AdvertisedAt = new("advertisedAtIn", "advertised duration counted at", EntrySay.In,
        lobe => lobe.AdvertisedAtIn, (lobe, value) => lobe with { AdvertisedAtIn = value });

    public static readonly LobeField LobeLift = new("lobeLiftIn", "lobe lift", EntrySay.In,
        lobe => lobe.LobeLiftIn, (lobe, value) => lobe with { LobeLiftIn = value });

    public static readonly LobeField ValveLift = new("valveLiftIn", "valve lift", EntrySay.In,
        lobe => lobe.ValveLiftIn, (lobe, value) => lobe with { ValveLiftIn = value });

    public static readonly LobeField Lash = new("lashIn", "lash", EntrySay.In,
        lobe => lobe.LashIn, (lobe, value) => lobe with { LashIn = value });
}

/// <summary>A figure that the whole cam has once.</summary>
internal sealed record CamField(string Path, string Words, Func<double, string> Say, Func<CamSpec, double?> Get, Func<CamSpec, double, CamSpec> Set)
{
    public static readonly CamField Separation = new("lobeSeparationCamDeg", "lobe separation", EntrySay.Cam,
        spec => spec.LobeSeparationCamDeg, (spec, value) => spec with { LobeSeparationCamDeg = value });

    public static readonly CamField IntakeCenterline = new("intakeCenterlineCrankDeg", "intake centreline", EntrySay.Crank,
        spec => spec.IntakeCenterlineCrankDeg, (spec, value) => spec with { IntakeCenterlineCrankDeg = value });

    public static readonly CamField Advance = new("advanceCrankDeg", "advance", EntrySay.Crank,
        spec => spec.AdvanceCrankDeg, (spec, value) => spec with { AdvanceCrankDeg = value });

    public static readonly CamField Rocker = new("rockerRatio", "rocker ratio", EntrySay.Ratio,
        spec => spec.RockerRatio, (spec, value) => spec with { RockerRatio = value });

    public static readonly CamField Follower = new("followerDiameterIn", "roller or foot diameter", EntrySay.In,
        spec => spec.FollowerDiameterIn, (spec, value) => spec with { FollowerDiameterIn = value });

    public static readonly CamField BaseCircle = new("maxBaseCircleDiameterIn", "largest base circle", EntrySay.In,
        spec => spec.MaxBaseCircleDiameterIn, (spec, value) => spec with { MaxBaseCircleDiameterIn = value });
}

internal static class EntrySay
{
    public static string In(double value) => FormattableString.Invariant($"{value:.000###} in");

    public static string Crank(double value) => FormattableString.Invariant($"{value:0.####} crank degrees");

    public static string Cam(double value) => FormattableString.Invariant($"{value:0.####} cam degrees");

    public static string Ratio(double value) => FormattableString.Invariant($"{value:0.####} to 1");
}
