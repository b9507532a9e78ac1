using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Demo;

/// <summary>Reads orders.csv: an order a row, with its specification and how far it has come.</summary>
internal static class OrderRows
{
    public static IReadOnlyList<ScenarioOrder> Read(
        SeedFolder folder, IReadOnlyDictionary<string, EngineFamily> families, IReadOnlyDictionary<string, BlankPart> blanks, IReadOnlyDictionary<string, Contact> customers)
    {
        var orders = new List<ScenarioOrder>();
        foreach (var row in folder.Rows("orders.csv"))
        {
            row.Text("customer");
            if (row.Known("customer", customers) is not { } customer)
                continue;
            var order = Order(row, customer, Cams(row, blanks));
            OrderRowCheck.Check(row, order, row.Known("engineFamily", families));
            orders.Add(order);
        }
        return orders;
    }

    private static ScenarioOrder Order(CsvRow row, Contact customer, IReadOnlyList<ScenarioCam> cams)
    {
        var stage = row.Text("stage");
        var isState = Enum.TryParse<OrderState>(stage, ignoreCase: true, out var state);
        return new ScenarioOrder
        {
            Row = row.Name,
            Order = row.Whole("order"),
            ReceivedDaysAgo = row.Whole("receivedDaysAgo"),
            Channel = row.Choice<OrderChannel>("channel"),
            Customer = customer,
            Cams = cams,
            Asked = row.Maybe("asked"),
            State = isState ? state : OrderState.InWork,
            At = isState ? null : row.Choice<Stage>("stage"),
            QuotedAfterDays = row.MaybeWhole("quotedAfterDays"),
            DecidedAfterDays = row.MaybeWhole("decidedAfterDays"),
            PromisedAfterDays = row.MaybeWhole("promisedAfterDays"),
            StageSinceDaysAgo = row.Whole("stageSinceDaysAgo"),
            DeclineReason = row.Maybe("declineReason"),
        };
    }

    /// <summary>The cam of the row, and that of the engine's other side where it is ordered too.</summary>
    private static IReadOnlyList<ScenarioCam> Cams(CsvRow row, IReadOnlyDictionary<string, BlankPart> blanks)
    {
        var first = new CamEntry
        {
            Spec = Spec(row),
            Kind = row.MaybeChoice<WorkKind>("kind") ?? WorkKind.NewGrind,
            Quantity = row.MaybeWhole("quantity") ?? 1,
            ReceivedCondition = row.Maybe("condition"),
            Gear = row.Maybe("gearMarks") is { } marks ? new GearSwap { Marks = marks, Old = CamGear.PressedIron, New = CamGear.PressedIron } : null,
        };
        var cams = new List<ScenarioCam> { new(first, row.Known("blankPart", blanks)) };
        if (row.Known("otherSidePart", blanks) is { } other)
            cams.Add(new ScenarioCam(first with { Spec = first.Spec with { Side = other.Side } }, other));
        return cams;
    }

    private static CamSpec Spec(CsvRow row) => new()
    {
        EngineFamily = row.Maybe("engineFamily"),
        Side = row.MaybeChoice<CamSide>("side"),
        Lifter = row.MaybeChoice<LifterType>("lifter"),
        FollowerDiameterIn = row.MaybeNumber("followerDiameterIn"),
        Intake = Lobe(row, "intake"),
        Exhaust = Lobe(row, "exhaust"),
        RockerRatio = row.MaybeNumber("rockerRatio"),
        LobeSeparationCamDeg = row.MaybeNumber("lobeSeparationCamDeg"),
        IntakeCenterlineCrankDeg = row.MaybeNumber("intakeCenterlineCrankDeg"),
        AdvanceCrankDeg = row.MaybeNumber("advanceCrankDeg"),
        DistributorGear = row.MaybeChoice<DistributorGear>("distributorGear"),
        MaxBaseCircleDiameterIn = row.MaybeNumber("maxBaseCircleDiameterIn"),
        FiringOrder = row.Maybe("firingOrder"),
        Use = row.Maybe("use"),
        Notes = row.Maybe("notes"),
    };

    private static LobeWish Lobe(CsvRow row, string name) => new()
    {
        LobeLiftIn = row.MaybeNumber($"{name}LobeLiftIn"),
        ValveLiftIn = row.MaybeNumber($"{name}ValveLiftIn"),
        DurationAt050CrankDeg = row.MaybeNumber($"{name}DurationAt050CrankDeg"),
        AdvertisedDurationCrankDeg = row.MaybeNumber($"{name}AdvertisedDurationCrankDeg"),
        AdvertisedAtIn = row.MaybeNumber($"{name}AdvertisedAtIn"),
        LashIn = row.MaybeNumber($"{name}LashIn"),
    };
}
