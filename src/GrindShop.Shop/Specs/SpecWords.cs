using System.Globalization;
using GrindShop.Shop.Engines;

namespace GrindShop.Shop.Specs;

/// <summary>One field of a specification as people read it: path as in the JSON, name, and its value with unit (null where blank).</summary>
public sealed record SpecField(string Path, string Name, Func<CamSpec, string?> Read);

/// <summary>The fields of a specification in reading order, with their names and units.</summary>
public static class SpecWords
{
    public static readonly IReadOnlyList<SpecField> Fields =
    [
        new("engineFamily", "Engine family", spec => spec.EngineFamily),
        new("side", "Side", spec => spec.Side?.ToString().ToLowerInvariant()),
        new("lifter", "Lifter", spec => spec.Lifter?.Words()),
        new("followerDiameterIn", "Roller or foot diameter", spec => In(spec.FollowerDiameterIn)),
        .. Lobe("intake", "Intake", spec => spec.Intake),
        .. Lobe("exhaust", "Exhaust", spec => spec.Exhaust),
        new("rockerRatio", "Rocker ratio", spec => Unit(spec.RockerRatio, "0.##", "to 1")),
        new("lobeSeparationCamDeg", "Lobe separation", spec => Unit(spec.LobeSeparationCamDeg, "0.##", "cam deg")),
        new("intakeCenterlineCrankDeg", "Intake centreline", spec => Crank(spec.IntakeCenterlineCrankDeg)),
        new("advanceCrankDeg", "Advance", spec => Crank(spec.AdvanceCrankDeg)),
        new("distributorGear", "Distributor gear", spec => spec.DistributorGear?.Words()),
        new("mechanicalFuelPump", "Mechanical fuel pump", spec => spec.MechanicalFuelPump switch { true => "yes", false => "no", _ => null }),
        new("maxBaseCircleDiameterIn", "Largest base circle", spec => In(spec.MaxBaseCircleDiameterIn)),
        new("firingOrder", "Firing order", spec => Text(spec.FiringOrder)),
        new("use", "Use", spec => Text(spec.Use)),
        new("notes", "Notes", spec => Text(spec.Notes)),
    ];

    /// <summary>The name of a field of this path; the path itself where there is none.</summary>
    public static string Name(string path) =>
        Fields.FirstOrDefault(field => field.Path == path)?.Name ?? (path.Length == 0 ? path : char.ToUpperInvariant(path[0]) + path[1..]);

    /// <summary>A value that the shop filled in, with the unit that its field's name ends in.</summary>
    public static string WithUnit(FilledField fill) =>
        fill.Field.EndsWith("CamDeg", StringComparison.Ordinal) ? $"{fill.Value} cam deg"
        : fill.Field.EndsWith("CrankDeg", StringComparison.Ordinal) ? $"{fill.Value} crank deg"
        : fill.Field.EndsWith("In", StringComparison.Ordinal) ? $"{fill.Value} in"
        : fill.Field == "rockerRatio" ? $"{fill.Value} to 1"
        : fill.Value;

    private static IEnumerable<SpecField> Lobe(string path, string name, Func<CamSpec, LobeWish> lobe) =>
    [
        new($"{path}.lobeLiftIn", $"{name} lobe lift", spec => In(lobe(spec).LobeLiftIn)),
        new($"{path}.valveLiftIn", $"{name} valve lift", spec => In(lobe(spec).ValveLiftIn)),
        new($"{path}.durationAt050CrankDeg", $"{name} duration at .050", spec => Crank(lobe(spec).DurationAt050CrankDeg)),
        new($"{path}.advertisedDurationCrankDeg", $"{name} advertised duration", spec => Crank(lobe(spec).AdvertisedDurationCrankDeg)),
        new($"{path}.advertisedAtIn", $"{name} advertised at", spec => In(lobe(spec).AdvertisedAtIn)),
        new($"{path}.lashIn", $"{name} lash", spec => In(lobe(spec).LashIn)),
    ];

    private static string? In(double? value) => Unit(value, "0.000#", "in");

    private static string? Crank(double? value) => Unit(value, "0.##", "crank deg");

    private static string? Unit(double? value, string format, string unit) => value is { } known ? $"{known.ToString(format, CultureInfo.InvariantCulture)} {unit}" : null;

    private static string? Text(string? text) => string.IsNullOrWhiteSpace(text) ? null : text;
}
