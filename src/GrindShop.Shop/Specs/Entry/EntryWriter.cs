using System.Globalization;
using GrindShop.Shop.Engines;

namespace GrindShop.Shop.Specs.Entry;

/// <summary>Writes a specification as the lines that <see cref="SpecEntry"/> reads back as the same one.</summary>
public static class EntryWriter
{
    public static string Write(CamSpec spec)
    {
        IEnumerable<string> figures =
        [
            .. Some(spec.EngineFamily),
            .. Some(spec.Side is { } side ? $"{side.ToString().ToLowerInvariant()} cam" : null),
            .. Some(spec.Lifter?.Words()),
            .. One(spec.FollowerDiameterIn, Length, "{0} " + (spec.Lifter is { } lifter ? lifter.IsRoller() ? "wheel" : "foot" : "dia follower")),
            .. Both(spec, lobe => lobe.DurationAt050CrankDeg, "@.050"),
            .. Advertised(spec),
            .. Both(spec, lobe => lobe.LobeLiftIn, "lobe lift", Length),
            .. Both(spec, lobe => lobe.ValveLiftIn, "valve lift", Length),
            .. One(spec.RockerRatio, Number, "{0} rockers"),
            .. One(spec.LobeSeparationCamDeg, Number, "{0} lsa"),
            .. One(spec.IntakeCenterlineCrankDeg, Number, "{0} icl"),
            .. Advance(spec.AdvanceCrankDeg),
            .. Both(spec, lobe => lobe.LashIn, "lash"),
            .. Some(spec.DistributorGear is { } gear ? $"{gear.Words()} distributor gear" : null),
            .. Some(spec.MechanicalFuelPump switch { true => "mechanical fuel pump", false => "no mechanical fuel pump", _ => null }),
            .. One(spec.MaxBaseCircleDiameterIn, Length, "bc max {0}"),
            .. Some(spec.FiringOrder is { } order ? $"firing order {order}" : null),
        ];
        return string.Join('\n', [.. Some(string.Join(", ", figures)), .. Some(spec.Use is { } use ? $"use: {use}" : null), .. Some(spec.Notes is { } notes ? $"notes: {notes}" : null)]);
    }

    private static IEnumerable<string> Some(string? words) => string.IsNullOrEmpty(words) ? [] : [words];

    private static IEnumerable<string> One(double? value, Func<double, string> write, string words) =>
        value is { } known ? [string.Format(CultureInfo.InvariantCulture, words, write(known))] : [];

    private static IEnumerable<string> Advance(double? value) => value switch
    {
        null => [],
        0 => ["straight up"],
        < 0 and var retard => [$"{Number(-retard)} retarded"],
        var advance => [$"{Number(advance.Value)} advanced"],
    };

    private static IEnumerable<string> Advertised(CamSpec spec)
    {
        var (intake, exhaust) = (spec.Intake, spec.Exhaust);
        if (intake.AdvertisedAtIn == exhaust.AdvertisedAtIn && intake.AdvertisedDurationCrankDeg is not null && exhaust.AdvertisedDurationCrankDeg is not null)
            return Both(spec, lobe => lobe.AdvertisedDurationCrankDeg, At(intake.AdvertisedAtIn));
        return [.. Advertised("int", intake), .. Advertised("exh", exhaust)];
    }

    private static IEnumerable<string> Advertised(string name, LobeWish lobe) => lobe switch
    {
        { AdvertisedDurationCrankDeg: { } duration } => [$"{name} {Number(duration)} {At(lobe.AdvertisedAtIn)}"],
        { AdvertisedAtIn: { } at } => [$"{name} advertised @{Number(at)}"],
        _ => [],
    };

    private static string At(double? check) => check is { } at ? $"@{Number(at)}" : "advertised";

    private static IEnumerable<string> Both(CamSpec spec, Func<LobeWish, double?> read, string words, Func<double, string>? length = null)
    {
        var write = length ?? Number;
        return (read(spec.Intake), read(spec.Exhaust)) switch
        {
            ({ } intake, { } exhaust) when Pair.Belong(intake, exhaust, tight: false) => [$"{write(intake)}/{write(exhaust)} {words}"],
            var (intake, exhaust) => [.. One(intake, write, $"int {{0}} {words}"), .. One(exhaust, write, $"exh {{0}} {words}")],
        };
    }

    private static string Number(double value) => Short(value.ToString("0.######", CultureInfo.InvariantCulture));

    /// <summary>Always with its point: a whole number would be read as thousandths.</summary>
    private static string Length(double value) => Short(value.ToString("0.0#####", CultureInfo.InvariantCulture));

    /// <summary>As the trade writes it: .355 and not 0.355.</summary>
    private static string Short(string number) => number.StartsWith("0.", StringComparison.Ordinal) ? number[1..] : number;
}
