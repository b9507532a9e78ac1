using GrindShop.Shop.Blanks;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.Demo;

/// <summary>One purchase order of the scenario lived through by its own methods, each at its day.</summary>
internal sealed class PurchaseStory(string number, IReadOnlyList<ScenarioPurchase> rows, IReadOnlyDictionary<string, BlankLot> lots, string by, ScenarioCalendar calendar)
{
    public PurchaseOrder Order { get; } = PurchaseOrder.Draft(number, rows[0].Part.Supplier, $"scenario-{rows[0].Order}", by, calendar.At(rows[0].SentDaysAgo ?? 0, ScenarioCalendar.Received), "Drafted from the shelf list.");

    /// <summary>What the purchase order itself refused.</summary>
    public IReadOnlyList<RowProblem> Play()
    {
        var problems = new List<RowProblem>();
        void Did<T>(ScenarioPurchase row, string field, Outcome<T> outcome)
        {
            if (outcome.Refusal is { } refusal)
                problems.Add(new RowProblem("purchases.csv", row.Row, field, refusal.Reason));
        }

        foreach (var row in rows)
            Did(row, "quantity", Order.Want(row.Part, null, Wish(row), Sent(row), by, At(row)));
        if (rows[0].SentDaysAgo is null)
            return problems;
        Did(rows[0], "sentDaysAgo", Order.Send(Sent(rows[0]), by, At(rows[0])));
        foreach (var (row, lot) in rows.SelectMany(row => row.Lots, (row, lot) => (row, Lot: lots[lot.LotNumber])).OrderBy(pair => pair.Lot.ReceivedAt))
            Did(row, "lots", Order.Receive(Delivery(row, lot), lot, by, lot.ReceivedAt));
        foreach (var row in rows.Where(row => row.NewDateAfterDays is not null))
            Did(row, "newDateAfterDays", Order.Expect(row.Part.PartNumber, Sent(row).AddDays(row.NewDateAfterDays!.Value), row.NewDateWhy, Sent(row), by, calendar.At(NewDateDaysAgo(row), ScenarioCalendar.Decided)));
        if (rows[0].ClosedDaysAgo is { } closed)
            Did(rows[0], "closedDaysAgo", Order.Close(rows[0].ClosedWhy, by, calendar.At(closed, ScenarioCalendar.Decided)));
        return problems;
    }

    /// <summary>The supplier called when the first part of the order had come in, or a week before the day it had named.</summary>
    private static int NewDateDaysAgo(ScenarioPurchase row) =>
        Math.Max(0, row.Lots.Select(lot => lot.ReceivedDaysAgo).DefaultIfEmpty(row.SentDaysAgo!.Value - row.ExpectedAfterDays + 7).Min());

    private PurchaseWish Wish(ScenarioPurchase row) => new(row.Quantity, row.UnitCost, 0, Sent(row).AddDays(row.ExpectedAfterDays), row.UnusualWhy);

    private DateOnly Sent(ScenarioPurchase row) => calendar.Day(row.SentDaysAgo ?? 0);

    private DateTimeOffset At(ScenarioPurchase row) => calendar.At(row.SentDaysAgo ?? 0, ScenarioCalendar.Quoted);

    private static Delivery Delivery(ScenarioPurchase row, BlankLot lot) => new()
    {
        PartNumber = row.Part.PartNumber,
        Quantity = row.Lots.First(each => each.LotNumber == lot.LotNumber).Quantity,
        Location = lot.Location,
        Key = $"scenario-{lot.LotNumber}",
    };
}
