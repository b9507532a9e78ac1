using GrindShop.Shop.Engines;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Demo;

/// <summary>Does a row of orders.csv tell a story that can have happened?</summary>
internal static class OrderRowCheck
{
    public static void Check(CsvRow row, ScenarioOrder order, EngineFamily? family)
    {
        var completed = SpecCompletion.Complete(order.Spec, family);
        foreach (var problem in completed.InTheWay)
            row.Wrong(problem.Field, problem.Message);
        Needs(row, order);
        Days(row, order);
        if (order is { At: { } stage, Blank: { } blank } && Stages.RouteFor(blank, null).All(step => step.Stage != stage))
            row.Wrong("stage", $"A job on blank {blank.PartNumber} has no stage \"{stage.Words()}\".");
    }

    private static void Needs(CsvRow row, ScenarioOrder order)
    {
        var accepted = order.State is OrderState.Accepted or OrderState.InWork or OrderState.Shipped;
        var quoted = accepted || order.State == OrderState.Quoted;
        if (quoted && order.Blank is null)
            row.Wrong("blankPart", "A priced order stands on a blank.");
        if (quoted && order.QuotedAfterDays is null)
            row.Wrong("quotedAfterDays", "A priced order was priced some day.");
        if ((accepted || order.State == OrderState.Declined) && order.DecidedAfterDays is null)
            row.Wrong("decidedAfterDays", "An accepted or declined order was decided some day.");
        if (accepted && order.PromisedAfterDays is not >= 0)
            row.Wrong("promisedAfterDays", "An accepted order has a promised day.");
        if (order.State == OrderState.Declined && order.DeclineReason is null)
            row.Wrong("declineReason", "A declined order says why.");
    }

    private static void Days(CsvRow row, ScenarioOrder order)
    {
        if (order.QuotedAfterDays < 0 || order.DecidedAfterDays < 0 || order.DecidedDaysAgo < 0)
            row.Wrong("receivedDaysAgo", "Received, quoted and decided must follow one another and not lie ahead.");
        if (order.StageSinceDaysAgo < 0 || order.StageSinceDaysAgo > order.DecidedDaysAgo)
            row.Wrong("stageSinceDaysAgo", "The stage was reached after the order was decided, and not ahead of today.");
    }
}
