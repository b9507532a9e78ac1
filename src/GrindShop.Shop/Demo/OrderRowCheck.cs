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
        foreach (var cam in order.Cams)
            foreach (var problem in Problems(cam.Entry, family))
                row.Wrong(problem.Field, problem.Message);
        Needs(row, order);
        Days(row, order);
        if (order.At is { } stage && order.Route(null).All(step => step.Stage != stage))
            row.Wrong("stage", $"A job on {order.First.Blank?.PartNumber ?? "the customer's own cam"} has no stage \"{stage.Words()}\".");
    }

    private static IEnumerable<FieldProblem> Problems(CamEntry cam, EngineFamily? family)
    {
        var completed = SpecCompletion.Complete(cam.Spec, family);
        return [.. cam.Kind == WorkKind.GearReplacement ? completed.Problems : completed.InTheWay, .. CamIntake.Problems(cam, family)];
    }

    private static void Needs(CsvRow row, ScenarioOrder order)
    {
        var accepted = order.State.IsAgreed() || order.State == OrderState.Cancelled;
        var quoted = accepted || order.State is OrderState.Quoted or OrderState.Expired;
        if (quoted && order.Cams.Any(cam => cam.Entry.Kind == WorkKind.NewGrind && cam.Blank is null))
            row.Wrong("blankPart", "A priced order stands on a blank.");
        if (quoted && order.QuotedAfterDays is null)
            row.Wrong("quotedAfterDays", "A priced order was priced some day.");
        if ((accepted || order.State is OrderState.Declined or OrderState.WaitingForCustomer) && order.DecidedAfterDays is null)
            row.Wrong("decidedAfterDays", "An order that was accepted, declined or asked about was so some day.");
        if (accepted && order.PromisedAfterDays is not >= 0)
            row.Wrong("promisedAfterDays", "An accepted order has a promised day.");
        if (order.State is OrderState.Declined or OrderState.Cancelled && order.DeclineReason is null)
            row.Wrong("declineReason", "A declined or cancelled order says why.");
        if ((order.State == OrderState.WaitingForCustomer) != (order.Asked is not null))
            row.Wrong("asked", "An order that waits for its customer says what was asked, and only such a one.");
        if (order.State == OrderState.Expired && order.QuotedDaysAgo <= ScenarioOrder.RunOutDays)
            row.Wrong("quotedAfterDays", $"A price runs out after {ScenarioOrder.RunOutDays} days.");
    }

    private static void Days(CsvRow row, ScenarioOrder order)
    {
        if (order.QuotedAfterDays < 0 || order.DecidedAfterDays < 0 || order.DecidedDaysAgo < 0)
            row.Wrong("receivedDaysAgo", "Received, quoted and decided must follow one another and not lie ahead.");
        if (order.StageSinceDaysAgo < 0 || order.StageSinceDaysAgo > order.DecidedDaysAgo)
            row.Wrong("stageSinceDaysAgo", "The stage was reached after the order was decided, and not ahead of today.");
    }
}
