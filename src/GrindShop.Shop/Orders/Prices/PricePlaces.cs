using System.Globalization;
using System.Text.RegularExpressions;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>The places of the price list that may be filled and are not yet, by their key.</summary>
public static partial class PricePlaces
{
    /// <summary>A figure to be set, with amount 0; null where the price list has no place of this key.</summary>
    public static PriceEntry? Of(string key, IReadOnlyList<EngineFamily> families) => key.Split('/') switch
    {
        ["base", var code, var lifter] when Family(code, families) is { } family && Choice<LifterType>(lifter) is { } known =>
            new BasePrice { EngineFamily = family, Lifter = known, Amount = 0 },
        ["repair", var code, var kind] when Family(code, families) is { } family && Choice<WorkKind>(kind) is { } known and not WorkKind.NewGrind =>
            new RepairPrice { EngineFamily = family, Kind = known, Amount = 0 },
        ["adder", var code] when AdderCode().IsMatch(code) => new PriceAdder { Code = code, Name = "", When = AdderTrigger.Manual, Amount = 0 },
        ["break", var from] when int.TryParse(from, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is >= 2 and <= 100 =>
            new QuantityBreak { From = count, Amount = 0 },
        _ => null,
    };

    private static EngineFamily? Family(string code, IReadOnlyList<EngineFamily> families) => families.FirstOrDefault(family => family.Code == code);

    private static T? Choice<T>(string name)
        where T : struct, Enum => name.Length > 0 && char.IsLetter(name[0]) && Enum.TryParse<T>(name, ignoreCase: true, out var choice) && Enum.IsDefined(choice) ? choice : null;

    [GeneratedRegex("^[A-Z][A-Z0-9]{1,11}$")]
    private static partial Regex AdderCode();
}
