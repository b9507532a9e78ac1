using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders;

/// <summary>
/// What the shop can say today to an order that was judged earlier: whether its blanks still may become its cams, and whether enough of them are in
/// stock and not promised to others. The answers that the order keeps stay as they were.
/// </summary>
public sealed class JudgedToday
{
    private readonly Order _order;
    private readonly IReadOnlyDictionary<int, string> _parts;
    private readonly IReadOnlyDictionary<int, FeasibilityAnswer> _answers;
    private readonly IReadOnlyDictionary<string, int> _promised;
    private readonly CatalogContent _content;

    private JudgedToday(Order order, IReadOnlyDictionary<int, string> parts, IReadOnlyDictionary<int, FeasibilityAnswer> answers, IReadOnlyDictionary<string, int> promised, CatalogContent content) =>
        (_order, _parts, _answers, _promised, _content) = (order, parts, answers, promised, content);

    /// <param name="parts">The blank of each cam by its place in the order; null for those that were quoted.</param>
    public static async Task<JudgedToday> OfAsync(Catalog catalog, ShopDb db, Order order, IReadOnlyDictionary<int, string>? parts, CancellationToken cancel)
    {
        var before = await db.WaitingCamsAsync(cancel);
        var answers = new Dictionary<int, FeasibilityAnswer>();
        foreach (var cam in order.Cams)
            if (cam is { NeedsBlank: true, Answer: { } answer })
                answers[cam.Ordinal] = await catalog.JudgeAsync(db, answer.Grind, cancel);
        var after = await db.WaitingCamsAsync(cancel);
        // A blank that is taken or given back between the readings is counted as promised rather than as free.
        var promised = before.Concat(after).Select(cams => cams.PartNumber).Distinct()
            .ToDictionary(part => part, part => Math.Max(before.PromisedToOthers(part, order.Number), after.PromisedToOthers(part, order.Number)));
        return new JudgedToday(order, parts ?? Quoted(order), answers, promised, await catalog.ContentAsync(db, cancel));
    }

    /// <summary>The same for a promise that is about to be made: until the transaction ends nobody else promises a blank.</summary>
    public static async Task<JudgedToday> ToPromiseAsync(Catalog catalog, ShopDb db, Order order, CancellationToken cancel)
    {
        await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock({Turn.Promises})", cancel);
        return await OfAsync(catalog, db, order, null, cancel);
    }

    /// <summary>Why a blank or a gear that was chosen earlier may not be promised any more; null where all of it may.</summary>
    public Refusal? Refusal => _order.Cams.Select(Refuse).FirstOrDefault(refusal => refusal is not null);

    /// <summary>The figures that were answered, with the stock and the days of today; null for a cam that came in, or one that has no blank yet.</summary>
    public BlankFit? Fit(OrderCam cam)
    {
        if (_parts.GetValueOrDefault(cam.Ordinal) is not { } part || cam.Answer?.Blanks.FirstOrDefault(fit => fit.PartNumber == part) is not { } answered)
            return null;
        var isEnough = Free(cam, part) - Promised(part) >= Wanted(part);
        return answered with { InStock = isEnough, LeadTimeDays = isEnough ? 0 : _content.Blank(part)?.Part.LeadTimeDays ?? answered.LeadTimeDays };
    }

    /// <summary>The figures of every cam on a blank, by its place in the order.</summary>
    public IReadOnlyDictionary<int, BlankFit> Fits => _order.Cams.Where(cam => Fit(cam) is not null).ToDictionary(cam => cam.Ordinal, cam => Fit(cam)!);

    /// <summary>What has to be bought for the order, and why what lies on the shelf is not enough; a sentence for each part.</summary>
    public IReadOnlyList<string> Shortages =>
        [.. _order.Cams.Select(cam => (Cam: cam, Fit: Fit(cam))).Where(pair => pair.Fit is { InStock: false }).DistinctBy(pair => pair.Fit!.PartNumber).Select(pair => Shortage(pair.Cam, pair.Fit!))];

    /// <summary>Why a price that was drawn up with these blanks is not the price of now: one was free and is not any more, or the other way round.</summary>
    public Refusal? OtherStock(IReadOnlyDictionary<int, BlankFit> drawnUp) =>
        _order.Cams.Select(Fit).OfType<BlankFit>().FirstOrDefault(fit => drawnUp.Values.Any(then => then.PartNumber == fit.PartNumber && then.InStock != fit.InStock)) is { } other
            ? new Refusal("otherStock", $"Meanwhile blank {other.PartNumber} is {(other.InStock ? "free" : "not free any more in the number that is needed")}. The lines and the day follow; look at them and quote again.")
            : null;

    /// <summary>The day on which the last cam of the order is done, if it is begun on this day.</summary>
    public DateOnly ShipsOn(DateOnly today) => _order.Cams.Select(cam => PromiseRule.Suggest(today, Fit(cam), _content.Rules.Settings)).Max();

    /// <summary>
    /// The day that a customer is promised who accepts the quote on this day: as much later than the rule says as the desk quoted, and never before the
    /// day that was quoted.
    /// </summary>
    public DateOnly PromisedOn(DateOnly today)
    {
        var usual = ShipsOn(today);
        if (_order.CurrentQuote is not { ShipOn: { } quoted } quote)
            return usual;
        var settings = _content.Rules.Settings;
        var byRule = quote.Cams.Select(cam => PromiseRule.Suggest(settings.Today(quote.At), cam.Fit, settings)).Max();
        var allowed = usual.AddDays(Math.Max(0, quoted.DayNumber - byRule.DayNumber));
        return allowed > quoted ? allowed : quoted;
    }

    private Refusal? Refuse(OrderCam cam) => !cam.NeedsBlank ? CamIntake.RefuseWork(cam, _content)
        : _parts.GetValueOrDefault(cam.Ordinal) is { } part && _answers.TryGetValue(cam.Ordinal, out var today) ? Refuse(today, part)
        : null;

    private static Refusal? Refuse(FeasibilityAnswer today, string part) => FeasibilityAnswer.Refuse(today, part) switch
    {
        { Code: "notJudged" } => new Refusal("usedUp", $"Blank {part} is used up and is not bought any more. Choose another blank."),
        { } refusal => refusal with { Reason = $"{refusal.Reason.TrimEnd('.')}. This is so since the cam was judged: choose another blank, or correct the specification." },
        null => null,
    };

    private string Shortage(OrderCam cam, BlankFit fit) =>
        WaitingSets.Shortage(fit.PartNumber, Wanted(fit.PartNumber), Free(cam, fit.PartNumber), Promised(fit.PartNumber), fit.LeadTimeDays);

    private int Promised(string part) => _promised.GetValueOrDefault(part);

    private int Free(OrderCam cam, string part) => _answers.GetValueOrDefault(cam.Ordinal)?.Blanks.FirstOrDefault(fit => fit.PartNumber == part)?.Available ?? 0;

    /// <summary>Pieces of the whole order that want this part.</summary>
    private int Wanted(string part) => _order.Cams.Where(cam => _parts.GetValueOrDefault(cam.Ordinal) == part).Sum(cam => cam.Quantity);

    private static Dictionary<int, string> Quoted(Order order) =>
        order.Cams.Where(cam => cam.QuotedPartNumber is not null).ToDictionary(cam => cam.Ordinal, cam => cam.QuotedPartNumber!);
}
