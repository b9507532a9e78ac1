using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>A cam as the desk enters it.</summary>
public sealed record CamEntry
{
    public WorkKind Kind { get; init; }

    /// <summary>Like pieces.</summary>
    public int Quantity { get; init; } = 1;

    public required CamSpec Spec { get; init; }

    /// <summary>How a cam that came in for a repair or a regrind looks.</summary>
    public string? ReceivedCondition { get; init; }

    /// <summary>The condition is what the customer tells; the cam is not here yet.</summary>
    public bool IsExpected { get; init; }

    /// <summary>What was measured on a used cam that is to be ground again; null while nobody has.</summary>
    public MeasuredCam? Measured { get; init; }

    /// <summary>The gears of a replacement; null for any other work.</summary>
    public GearSwap? Gear { get; init; }
}

public sealed partial class Order
{
    private readonly List<OrderCam> _cams = [];

    /// <summary>What was ordered, in the order in which it was; always loaded with the order.</summary>
    public IReadOnlyList<OrderCam> Cams => [.. _cams.OrderBy(cam => cam.Ordinal)];

    /// <summary>The first cam: the only one of most orders.</summary>
    public OrderCam First => _cams.MinBy(cam => cam.Ordinal)!;

    /// <summary>
    /// The cam was drawn up by the desk after acceptance and is not agreed yet: nothing is wanted of it until a revision says so, and the customer is
    /// not told of it.
    /// </summary>
    public bool IsDrawnUp(OrderCam cam) => cam.Quantity == 0 && !_revisions.Exists(revision => revision.Cam == cam.Ordinal);

    /// <summary>The cams that the customer knows of.</summary>
    public IReadOnlyList<OrderCam> ToldCams => [.. Cams.Where(cam => !IsDrawnUp(cam))];

    /// <summary>The specification that the customer knows of; empty for a cam that is only drawn up.</summary>
    public CamSpec ToldSpec(OrderCam cam) => IsDrawnUp(cam) ? new CamSpec() : cam.Spec;

    public int Pieces => _cams.Sum(cam => cam.Quantity);

    /// <summary>The cam of this place in the order, or null.</summary>
    public OrderCam? Cam(int ordinal) => _cams.Find(cam => cam.Ordinal == ordinal);

    /// <summary>The desk corrects the specification of a cam; a price that stood on the old one falls away.</summary>
    public Outcome<Order> Correct(CamSpec spec, FeasibilityAnswer? answer, string by, DateTimeOffset at, string why, int cam = 1)
    {
        if (!State.IsBeforeAcceptance())
            return NotNow("corrected");
        if (Cam(cam) is not { } corrected)
            return NoSuchCam(cam);
        corrected.Set(spec, answer);
        return Changed(by, at, _cams.Count == 1 ? why : $"Cam {cam}: {why}");
    }

    /// <summary>A further cam; a price that was offered without it falls away. In an accepted order it is only drawn up: a revision agrees on it.</summary>
    public Outcome<Order> AddCam(CamEntry entry, FeasibilityAnswer? answer, string by, DateTimeOffset at)
    {
        if (!State.IsBeforeAcceptance() && State is not (OrderState.Accepted or OrderState.InWork))
            return NotNow("given another cam");
        if (_cams.Count >= MostCams)
            return new Refusal("tooMany", $"An order holds at most {MostCams} cams; open another one.");
        var cam = new OrderCam(_cams.Max(one => one.Ordinal) + 1, entry, answer);
        _cams.Add(cam);
        return State.IsBeforeAcceptance()
            ? Changed(by, at, $"Cam {cam.Ordinal} added: {cam.Kind.Words()}, {entry.Spec.EngineFamily ?? "engine not named"}{Times(entry.Quantity)}.")
            : DrawUp(cam, by, at, $"Cam {cam.Ordinal} drawn up: {cam.Kind.Words()}, {entry.Spec.EngineFamily ?? "engine not named"}. Nothing is agreed of it yet.");
    }

    /// <summary>Another number of pieces, or another kind of work; a price that was offered falls away.</summary>
    public Outcome<Order> SetWork(int ordinal, CamEntry entry, FeasibilityAnswer? answer, string by, DateTimeOffset at)
    {
        if (Cam(ordinal) is not { } cam)
            return NoSuchCam(ordinal);
        if (!MayChange(cam))
            return NotNow("changed");
        var isDrawnUp = !State.IsBeforeAcceptance();
        cam.SetWork(entry);
        cam.Set(cam.Spec, answer);
        if (isDrawnUp)
            return DrawUp(cam, by, at, $"Cam {ordinal} drawn up anew: {entry.Kind.Words()}.");
        return Changed(by, at, $"Cam {ordinal}: {entry.Kind.Words()}{Times(entry.Quantity)}.");
    }

    public Outcome<Order> RemoveCam(int ordinal, string by, DateTimeOffset at)
    {
        if (Cam(ordinal) is not { } cam)
            return NoSuchCam(ordinal);
        if (!MayChange(cam))
            return NotNow("shortened");
        if (_cams.Count == 1)
            return new Refusal("lastCam", "An order has at least one cam; decline the order instead.");
        _cams.Remove(cam);
        if (State.IsBeforeAcceptance())
            return Changed(by, at, $"Cam {ordinal} taken out of the order.");
        Note(OrderEventKind.DrawnUp, by, at, $"Cam {ordinal} dropped; nothing was agreed of it.");
        return this;
    }

    private bool MayChange(OrderCam cam) => State.IsBeforeAcceptance() || (State is OrderState.Accepted or OrderState.InWork && IsDrawnUp(cam));

    private Order DrawUp(OrderCam cam, string by, DateTimeOffset at, string what)
    {
        cam.Quantity = 0;
        Note(OrderEventKind.DrawnUp, by, at, what);
        return this;
    }

    private const int MostCams = 20;

    private static string Times(int quantity) => quantity == 1 ? "" : $", {quantity} pieces";

    private Order Changed(string by, DateTimeOffset at, string what)
    {
        DropPrice();
        Enter(OrderState.New, OrderEventKind.Corrected, by, at, what);
        return this;
    }

    private Refusal NoSuchCam(int ordinal) => new("noSuchCam", $"Order {Number} has no cam {ordinal}.");
}
