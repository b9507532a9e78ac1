using System.Globalization;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Web.Shell;

namespace GrindShop.Web.Desk;

/// <summary>What is otherwise in a newer state of an order than in the one on the screen.</summary>
public static class OrderChange
{
    public static IReadOnlyList<SpecChange> Between(Order older, Order newer) =>
    [
        .. older.Cams.Concat(newer.Cams).Select(cam => cam.Ordinal).Distinct().Order().SelectMany(ordinal => OfCam(older.Cam(ordinal), newer.Cam(ordinal), newer.Cams.Count > 1 || older.Cams.Count > 1)),
        .. Order.ContactChanges(older.Contact, newer.Contact).Select(change => change with { Name = Say.Capital(change.Name) }),
        .. Whole(older, newer).Where(change => change.Was != change.Now),
    ];

    private static IEnumerable<SpecChange> OfCam(OrderCam? older, OrderCam? newer, bool isNamed)
    {
        var name = $"Cam {(older ?? newer)!.Ordinal}";
        if (older is null || newer is null)
            return [new SpecChange(name, Short(older), Short(newer))];
        SpecChange[] work =
        [
            new("Kind of work", older.Kind.Words(), newer.Kind.Words()),
            new("Pieces", Whole(older.Quantity), Whole(newer.Quantity)),
            new("Condition", older.ConditionWords, newer.ConditionWords),
            new("Gear", Gear(older), Gear(newer)),
            new("Measured on it", Measured(older), Measured(newer)),
        ];
        return SpecChange.Between(older.Spec, newer.Spec).Concat(work.Where(change => change.Was != change.Now))
            .Select(change => isNamed ? change with { Name = $"{name}, {change.Name.ToLowerInvariant()}" } : change);
    }

    private static IEnumerable<SpecChange> Whole(Order older, Order newer) =>
    [
        new("Quote", older.CurrentQuoteNumber, newer.CurrentQuoteNumber),
        new("Price", Money(older.Price), Money(newer.Price)),
        new("Promised", Day(older.PromisedOn), Day(newer.PromisedOn)),
        new("Received", Money(older.Received), Money(newer.Received)),
    ];

    private static string? Short(OrderCam? cam) => cam is null ? null : $"{cam.Kind.Words()}, {cam.Spec.EngineFamily ?? "engine not named"}";

    private static string? Gear(OrderCam cam) => cam.Gear is { } gear ? $"{gear.Words}, marks {gear.Marks}" : null;

    private static string? Measured(OrderCam cam) => cam.Measured is { } measured ? FormattableString.Invariant(
        $"base circle {measured.BaseCircleDiameterIn:0.000#} in, lifts {measured.IntakeLobeLiftIn:0.000#}/{measured.ExhaustLobeLiftIn:0.000#} in, durations {measured.IntakeDurationAt050CrankDeg:0.##}/{measured.ExhaustDurationAt050CrankDeg:0.##} crank deg, {measured.Alloy.Words()}, {measured.Hardening.Words()}{(measured.CaseLeftIn is { } left ? $", {left:0.000#} in of case" : "")}") : null;

    private static string? Money(decimal amount) => amount == 0 ? null : PriceRules.Dollars(amount);

    private static string? Day(DateOnly? day) => day is { } known ? Say.Day(known) : null;

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}
