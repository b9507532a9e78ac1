using System.Globalization;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Web.Public;

/// <summary>How a question about one field of a specification is answered: by a number in its range, or by a choice.</summary>
public sealed record ReplyField(string Label, FieldRange? Range, IReadOnlyList<(string Value, string Words)> Options)
{
    /// <summary>Null where the question is answered in words alone.</summary>
    public static ReplyField? Of(string? path, IReadOnlyList<EngineFamily> families) => path switch
    {
        "engineFamily" => new("Engine", null, [.. families.Select(family => (family.Code, family.Name))]),
        "lifter" => new("Lifter", null, SpecFields.Lifters),
        "side" => new("Side", null, SpecFields.Sides),
        "distributorGear" => new("Distributor gear", null, SpecFields.Gears),
        "mechanicalFuelPump" => new("Mechanical fuel pump", null, SpecFields.YesNo),
        _ => NumberField.All.FirstOrDefault(field => field.Path == path) is { } number ? new(number.Label, number.Range, []) : null,
    };

    /// <summary>Null where the value may be sent, or none was given.</summary>
    public string? Problem(string value)
    {
        if (value.Trim().Length == 0)
            return null;
        if (Range is null)
            return Options.Any(option => option.Value == value) ? null : "Choose one of the list.";
        return NumberText.TryRead(value, out var number) ? Range.Check(number, "")?.Message : $"\"{value.Trim()}\" is not a number. {Range.Sentence}";
    }

    /// <summary>The value as people read it.</summary>
    public string Say(string value) => Range is { } range
        ? NumberText.TryRead(value, out var number) && number is { } known ? string.Create(CultureInfo.InvariantCulture, $"{known:0.####} {range.Unit}") : value
        : Options.FirstOrDefault(option => option.Value == value).Words ?? value;
}
