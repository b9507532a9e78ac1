using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using Microsoft.AspNetCore.WebUtilities;

namespace GrindShop.Web.Public;

/// <summary>A draft read from a link, and the values in the link that could not be used.</summary>
public sealed record SpecQueryReading(SpecDraft Draft, IReadOnlyList<FieldProblem> Ignored);

/// <summary>A specification as the query string of a link, with short keys: a shared link opens the same cam. Use and notes are not shared.</summary>
public static class SpecQuery
{
    /// <summary>The key of the blank to show; no part of the specification.</summary>
    public const string BlankKey = "blank";

    /// <summary>The engine first: what follows may depend on it.</summary>
    private static readonly IReadOnlyList<(string Key, string Path)> Keys =
    [
        ("engine", "engineFamily"), ("side", "side"), ("lifter", "lifter"), ("gear", "distributorGear"), ("pump", "mechanicalFuelPump"), ("order", "firingOrder"),
        ("follower", NumberField.FollowerDiameter.Path), ("rocker", NumberField.RockerRatio.Path),
        .. Lobe("i", "intake"), .. Lobe("e", "exhaust"),
        ("lsa", NumberField.LobeSeparation.Path), ("icl", NumberField.IntakeCenterline.Path), ("advance", NumberField.Advance.Path), ("bc", NumberField.BaseCircleLimit.Path),
    ];

    private static readonly Dictionary<string, string> KeyByPath = Keys.ToDictionary(entry => entry.Path, entry => entry.Key);

    /// <summary>The key in a link of a field's path; the path itself where the field is in no link.</summary>
    public static string KeyOf(string path) => KeyByPath.GetValueOrDefault(path, path);

    /// <summary>"engine=RV8-R&amp;lifter=HydraulicRoller&amp;i050=222": what was left empty is left out.</summary>
    public static string Write(CamSpec spec)
    {
        var draft = SpecDraft.Of(spec);
        return string.Join('&', from entry in Keys let text = draft.Text(entry.Path) where text is not null select $"{entry.Key}={Uri.EscapeDataString(text)}");
    }

    /// <summary>The address of the geometry page of a cam, in one of its blanks where one is named.</summary>
    public static string Link(CamSpec spec, string? blank) =>
        $"geometry?{Write(spec)}{(blank is null ? "" : $"&{BlankKey}={Uri.EscapeDataString(blank)}")}";

    /// <summary>Reads what can be used and tells what cannot; keys it does not know are not its business.</summary>
    public static SpecQueryReading Read(string? query, CatalogContent content)
    {
        var given = QueryHelpers.ParseQuery(query);
        var (draft, ignored) = (new SpecDraft(), new List<FieldProblem>());
        foreach (var (key, path) in Keys)
            if (given.TryGetValue(key, out var values) && values.ToString().Trim() is { Length: > 0 } text)
                Take(draft, path, text, content, ignored);
        return new SpecQueryReading(draft, ignored);
    }

    private static void Take(SpecDraft draft, string path, string text, CatalogContent content, List<FieldProblem> ignored)
    {
        if (Usable(draft, path, text, content, out var wrong) is { } value)
            draft[path] = value;
        else
            ignored.Add(new FieldProblem(path, wrong));
    }

    private static string? Usable(SpecDraft draft, string path, string text, CatalogContent content, out string wrong)
    {
        wrong = "There is no such choice.";
        return path switch
        {
            "engineFamily" => content.Family(text)?.Code,
            "side" => Choice<CamSide>(text),
            "lifter" => Choice<LifterType>(text),
            "distributorGear" => Choice<DistributorGear>(text),
            "mechanicalFuelPump" => text is SpecDraft.Yes or SpecDraft.No ? text : null,
            "firingOrder" => Order(content.Family(draft.Text("engineFamily")), text, out wrong),
            _ => Number(NumberField.All.Single(field => field.Path == path), text, out wrong),
        };
    }

    private static string? Choice<T>(string text)
        where T : struct, Enum => Enum.GetNames<T>().FirstOrDefault(name => name.Equals(text, StringComparison.OrdinalIgnoreCase));

    private static string? Order(EngineFamily? family, string text, out string wrong)
    {
        wrong = "This is no firing order of the engine.";
        return text.Length <= SpecCheck.LongestFiringOrder && family?.IsFiringOrder(text) == true ? text : null;
    }

    private static string? Number(NumberField field, string text, out string wrong)
    {
        wrong = field.Range.Sentence;
        return NumberText.TryRead(text, out var value) && field.Range.Check(value, field.Path) is null ? text : null;
    }

    private static IEnumerable<(string, string)> Lobe(string key, string lobe) =>
    [
        ($"{key}050", $"{lobe}.durationAt050CrankDeg"), ($"{key}lift", $"{lobe}.lobeLiftIn"), ($"{key}valve", $"{lobe}.valveLiftIn"),
        ($"{key}adv", $"{lobe}.advertisedDurationCrankDeg"), ($"{key}at", $"{lobe}.advertisedAtIn"), ($"{key}lash", $"{lobe}.lashIn"),
    ];
}
