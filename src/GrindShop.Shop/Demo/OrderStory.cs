using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.People;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;

namespace GrindShop.Shop.Demo;

/// <summary>Something that happens in the scenario, to be played at its place in time; answers with what the shop's own rules refuse.</summary>
internal sealed record Happening(DateTimeOffset At, OrderStory Story, Func<DateTimeOffset, RowProblem?> Play);

/// <summary>One order of the scenario lived through by the order's and the job's own methods.</summary>
internal sealed class OrderStory(
    ScenarioOrder row, FeasibilityAnswer? answer, OrderNumbers numbers, Customer customer, ScenarioShop shop, ScenarioCalendar calendar)
{
    private readonly int _minutes = row.Order % 20;
    private BlankLot? _lot;

    public Job? Job { get; private set; }

    public Order Order { get; private set; } = null!;

    private string Desk => shop.Person(Roles.Desk, row.Order);

    private string Floor => shop.Person(Roles.Floor, row.Order);

    public IEnumerable<Happening> Happenings()
    {
        yield return On(row.ReceivedDaysAgo, ScenarioCalendar.Received, Receive);
        if (row is { QuotedAfterDays: not null, State: not OrderState.New })
            yield return On(row.QuotedDaysAgo, ScenarioCalendar.Quoted, Quote);
        if (row.State == OrderState.Declined)
            yield return On(row.DecidedDaysAgo, ScenarioCalendar.Decided, Decline);
        if (row.State is not (OrderState.Accepted or OrderState.InWork or OrderState.Shipped))
            yield break;
        yield return On(row.DecidedDaysAgo, ScenarioCalendar.Decided, Accept);
        foreach (var happening in row.State == OrderState.Accepted ? [] : Work())
            yield return happening;
    }

    private IEnumerable<Happening> Work()
    {
        var route = Stages.RouteFor(row.Blank!, shop.HeatTreater);
        var done = route.Select(step => step.Stage).TakeWhile(stage => stage != row.At).ToList();
        yield return On(row.OpenedDaysAgo, ScenarioCalendar.Opened, at => Open(route, at));
        foreach (var (index, daysAgo) in StepDays(done).Index())
            yield return On(daysAgo, ScenarioCalendar.StepDone(index + 1), at => Complete(done[index], at));
    }

    /// <summary>The days of the steps, spread between acceptance and the day the present stage was reached.</summary>
    private IEnumerable<int> StepDays(IReadOnlyList<Stage> done)
    {
        var (whole, days, sum) = (done.Sum(Share), row.DecidedDaysAgo - row.StageSinceDaysAgo, 0.0);
        foreach (var stage in done)
            yield return row.DecidedDaysAgo - (int)Math.Round(days * (sum += Share(stage)) / whole);
    }

    /// <summary>How long a step takes against the others.</summary>
    private static double Share(Stage stage) => stage switch
    {
        Stage.HeatTreatBack => 8,
        Stage.Grind or Stage.RoughGrind => 3,
        _ => 1,
    };

    private Happening On(int daysAgo, TimeOnly time, Func<DateTimeOffset, RowProblem?> play) => new(calendar.At(daysAgo, time, _minutes), this, play);

    private RowProblem? Receive(DateTimeOffset at)
    {
        var enquiry = new Enquiry { SubmitKey = $"scenario-{row.Order}", Channel = row.Channel, Spec = row.Spec, Contact = row.Customer };
        Order = Order.Receive(numbers, enquiry, customer, answer, row.Channel == OrderChannel.Web ? customer.Name : Desk, at);
        return null;
    }

    private RowProblem? Quote(DateTimeOffset at)
    {
        if (FeasibilityAnswer.Refuse(Order.First.Answer, row.Blank!.PartNumber) is { } refusal)
            return Problem("blankPart", refusal);
        var fit = Order.First.Answer!.Blanks.First(blank => blank.PartNumber == row.Blank.PartNumber);
        var lines = shop.Prices.Lines(Order.First.Answer.Grind, row.Blank.EngineFamily, row.Blank, fit, []);
        return lines.Succeeded
            ? Problem("quotedAfterDays", Order.Quote(Offer(fit, lines.Value), calendar.Day(row.QuotedDaysAgo), Desk, at).Refusal)
            : Problem("blankPart", lines.Refusal);
    }

    private QuoteOffer Offer(BlankFit fit, IReadOnlyList<PriceLine> lines) => new()
    {
        Parts = new Dictionary<int, string> { [Order.First.Ordinal] = fit.PartNumber },
        Lines = [.. QuoteDraft.ForPieces(Order.First, lines)],
        ValidUntil = calendar.Day(row.QuotedDaysAgo).AddDays(QuoteOffer.UsualDays),
        ShipOn = PromiseRule.Suggest(calendar.Day(row.QuotedDaysAgo), fit, shop.Settings),
    };

    private RowProblem? Accept(DateTimeOffset at)
    {
        var today = calendar.Day(row.DecidedDaysAgo);
        return Problem("promisedAfterDays", Order.Accept(today.AddDays(row.PromisedAfterDays!.Value), today, Desk, at).Refusal);
    }

    private RowProblem? Decline(DateTimeOffset at) => Problem("declineReason", Order.Decline(row.DeclineReason!, Desk, at).Refusal);

    private RowProblem? Open(IReadOnlyList<RouteStage> route, DateTimeOffset at)
    {
        _lot = shop.Lot(row.Blank!, at);
        if (_lot is null)
            return Problem("blankPart", $"On {at:yyyy-MM-dd} no blank {row.Blank!.PartNumber} is in stock.");
        var opened = Job.Open(Order, Order.First, new BlankLotClaim(_lot.Id, row.Blank!.PartNumber, _lot.LotNumber), route, Desk, at);
        Job = opened.Value;
        return Problem("blankPart", opened.Refusal ?? _lot.Allocate(Job!.Code, Desk, at).Refusal);
    }

    private RowProblem? Complete(Stage stage, DateTimeOffset at)
    {
        var taken = Job!.StepsDone == 0 ? _lot!.Consume(Job.Code, Floor, at).Refusal : null;
        return Problem("stage", taken ?? Job.Complete(stage, Floor, at, $"scenario-{stage}").Refusal);
    }

    private RowProblem? Problem(string field, Refusal? refusal) => refusal is null ? null : Problem(field, refusal.Reason);

    private RowProblem Problem(string field, string message) => new("orders.csv", row.Row, field, message);
}
