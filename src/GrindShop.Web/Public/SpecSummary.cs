using System.Globalization;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Web.Public;

/// <summary>A specification as it was asked, line by line; what was left empty is left out.</summary>
public static class SpecSummary
{
    public static IEnumerable<(string Name, string Value)> Of(CamSpec spec, EngineFamily? family) =>
    [
        .. Given("Engine", family?.Name ?? spec.EngineFamily),
        .. Given("Side", spec.Side?.ToString()),
        .. Given("Lifter", spec.Lifter?.Words()),
        .. NumberField.All.Where(field => field.Get(spec) is not null).Select(field => (field.Label, Value(field, spec))),
        .. Given("Distributor gear", spec.DistributorGear?.Words()),
        .. Given("Mechanical fuel pump", spec.MechanicalFuelPump switch { true => "yes", false => "no", _ => null }),
        .. Given("Firing order", spec.FiringOrder),
        .. Given("Use", spec.Use),
        .. Given("Notes", spec.Notes),
    ];

    private static string Value(NumberField field, CamSpec spec) =>
        string.Create(CultureInfo.InvariantCulture, $"{field.Get(spec)!.Value.ToString(field.Range.Unit == "in" ? "0.000#" : "0.##", CultureInfo.InvariantCulture)} {field.Range.Unit}");

    private static IEnumerable<(string, string)> Given(string name, string? value) => value is null ? [] : [(name, value)];
}
