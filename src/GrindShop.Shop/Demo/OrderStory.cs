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
    ScenarioOrder row, IReadOnlyDictionary<ScenarioCam, FeasibilityAnswer?> answers, OrderNumbers numbers, Customer customer, ScenarioShop shop, ScenarioCalendar calendar)
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
        if (row is { QuotedAfterDays: not null, State: not (OrderState.New or OrderState.WaitingForCustomer) })
            yield return On(row.QuotedDaysAgo, ScenarioCalendar.Quoted, Quote);
        foreach (var happening in Ends())
            yield return happening;
    }

    private IEnumerable<Happening> Ends() => row.State switch
    {
        OrderState.WaitingForCustomer => [On(row.DecidedDaysAgo, ScenarioCalendar.Decided, Ask)],
        OrderState.Declined => [On(row.DecidedDaysAgo, ScenarioCalendar.Decided, Decline)],
        OrderState.Expired => [On(row.RanOutDaysAgo, ScenarioCalendar.StockComes, Expire)],
        OrderState.Cancelled => [On(row.DecidedDaysAgo, ScenarioCalendar.Decided, Accept), On(row.StageSinceDaysAgo, ScenarioCalendar.Opened, Cancel)],
        OrderState.Accepted => [On(row.DecidedDaysAgo, ScenarioCalendar.Decided, Accept)],
        OrderState.InWork or OrderState.Shipped => [On(row.DecidedDaysAgo, ScenarioCalendar.Decided, Accept), .. Work()],
        _ => [],
    };

    private IEnumerable<Happening> Work()
    {
        var route = row.Route(shop.HeatTreater);
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
        var cam = row.First.Entry;
        var enquiry = new Enquiry
        {
            SubmitKey = $"scenario-{row.Order}",
            Channel = row.Channel,
            Spec = cam.Spec,
            Kind = cam.Kind,
            Quantity = cam.Quantity,
            ReceivedCondition = cam.ReceivedCondition,
            Gear = cam.Gear,
            Contact = row.Customer,
        };
        Order = Order.Receive(numbers, enquiry, customer, answers[row.First], row.Channel == OrderChannel.Web ? customer.Name : Desk, at);
        return row.Cams.Skip(1).Select(other => Problem("otherSidePart", Order.AddCam(other.Entry, answers[other], Desk, at).Refusal)).FirstOrDefault(problem => problem is not null);
    }

    private RowProblem? Quote(DateTimeOffset at)
    {
        var lines = new List<PriceLine>();
        foreach (var (cam, wanted) in Order.Cams.Zip(row.Cams))
        {
            var priced = Lines(cam, wanted.Blank);
            if (!priced.Succeeded)
                return Problem("blankPart", priced.Refusal);
            lines.AddRange(QuoteDraft.ForPieces(cam, priced.Value));
        }
        return Problem("quotedAfterDays", Order.Quote(Offer(lines), calendar.Day(row.QuotedDaysAgo), Desk, at).Refusal);
    }

    private Outcome<IReadOnlyList<PriceLine>> Lines(OrderCam cam, BlankPart? blank)
    {
        if (blank is null)
            return new List<PriceLine>(shop.Prices.RepairLines(cam.Kind, cam.Spec.EngineFamily, [], cam.Quantity));
        return FeasibilityAnswer.Refuse(cam.Answer, blank.PartNumber) is { } refusal
            ? refusal
            : shop.Prices.Lines(cam.Answer!.Grind, blank.EngineFamily, blank, cam.Answer.Blanks.First(fit => fit.PartNumber == blank.PartNumber), [], cam.Quantity);
    }

    private QuoteOffer Offer(IReadOnlyList<PriceLine> lines)
    {
        var (day, cams) = (calendar.Day(row.QuotedDaysAgo), Order.Cams.Zip(row.Cams, (cam, wanted) => (cam, wanted.Blank?.PartNumber)).ToList());
        return new QuoteOffer
        {
            Parts = cams.Where(cam => cam.PartNumber is not null).ToDictionary(cam => cam.cam.Ordinal, cam => cam.PartNumber!),
            Lines = lines,
            ValidUntil = day.AddDays(QuoteOffer.UsualDays),
            ShipOn = cams.Max(cam => PromiseRule.Suggest(day, cam.cam.Answer?.Blanks.FirstOrDefault(fit => fit.PartNumber == cam.PartNumber), shop.Settings)),
        };
    }

    private RowProblem? Ask(DateTimeOffset at) => Problem("asked", Order.Ask([new QuestionEntry(1, null, row.Asked!)], Desk, at, $"scenario-{row.Order}-asked").Refusal);

    private RowProblem? Accept(DateTimeOffset at)
    {
        var today = calendar.Day(row.DecidedDaysAgo);
        return Problem("promisedAfterDays", Order.Accept(today.AddDays(row.PromisedAfterDays!.Value), today, Desk, at).Refusal);
    }

    /// <summary>Where a price was named the customer said no to it, else the shop did.</summary>
    private RowProblem? Decline(DateTimeOffset at) => Problem("declineReason",
        (row.QuotedAfterDays is null ? Order.Decline(row.DeclineReason!, Desk, at) : Order.DeclineByCustomer(customer.Name, row.DeclineReason!, at)).Refusal);

    private RowProblem? Expire(DateTimeOffset at) => Problem("quotedAfterDays", Order.Expire(calendar.Day(row.RanOutDaysAgo), "GrindShop", at).Refusal);

    private RowProblem? Cancel(DateTimeOffset at) => Problem("declineReason", Order.Cancel(row.DeclineReason!, null, BlankEffect.OfCancelling([]).Words, Desk, at).Refusal);

    private RowProblem? Open(IReadOnlyList<RouteStage> route, DateTimeOffset at)
    {
        if (row.First.Blank is not { } blank)
            return Opened(Job.Open(Order, Order.First, null, route, Desk, at));
        _lot = shop.Lot(blank, at);
        if (_lot is null)
            return Problem("blankPart", $"On {at:yyyy-MM-dd} no blank {blank.PartNumber} is in stock.");
        return Opened(Job.Open(Order, Order.First, new BlankLotClaim(_lot.Id, blank.PartNumber, _lot.LotNumber), route, Desk, at))
            ?? Problem("blankPart", _lot.Allocate(Job!.Code, Desk, at).Refusal);
    }

    private RowProblem? Opened(Outcome<Job> opened)
    {
        Job = opened.Value;
        return Problem("blankPart", opened.Refusal);
    }

    private RowProblem? Complete(Stage stage, DateTimeOffset at)
    {
        var taken = Job!.StepsDone == 0 && _lot is not null ? _lot.Consume(Job.Code, Floor, at).Refusal : null;
        return Problem("stage", taken ?? Job.Complete(stage, Floor, at, $"scenario-{stage}").Refusal);
    }

    private RowProblem? Problem(string field, Refusal? refusal) => refusal is null ? null : Problem(field, refusal.Reason);

    private RowProblem Problem(string field, string message) => new("orders.csv", row.Row, field, message);
}
