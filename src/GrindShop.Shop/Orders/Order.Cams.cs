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

    /// <summary>A further cam; a price that was offered without it falls away.</summary>
    public Outcome<Order> AddCam(CamEntry entry, FeasibilityAnswer? answer, string by, DateTimeOffset at)
    {
        if (!State.IsBeforeAcceptance())
            return NotNow("given another cam");
        if (_cams.Count >= MostCams)
            return new Refusal("tooMany", $"An order holds at most {MostCams} cams; open another one.");
        var cam = new OrderCam(_cams.Max(one => one.Ordinal) + 1, entry, answer);
        _cams.Add(cam);
        return Changed(by, at, $"Cam {cam.Ordinal} added: {cam.Kind.Words()}, {entry.Spec.EngineFamily ?? "engine not named"}{Times(entry.Quantity)}.");
    }

    /// <summary>Another number of pieces, or another kind of work; a price that was offered falls away.</summary>
    public Outcome<Order> SetWork(int ordinal, CamEntry entry, FeasibilityAnswer? answer, string by, DateTimeOffset at)
    {
        if (!State.IsBeforeAcceptance())
            return NotNow("changed");
        if (Cam(ordinal) is not { } cam)
            return NoSuchCam(ordinal);
        cam.SetWork(entry);
        cam.Set(cam.Spec, answer);
        return Changed(by, at, $"Cam {ordinal}: {entry.Kind.Words()}{Times(entry.Quantity)}.");
    }

    public Outcome<Order> RemoveCam(int ordinal, string by, DateTimeOffset at)
    {
        if (!State.IsBeforeAcceptance())
            return NotNow("shortened");
        if (Cam(ordinal) is not { } cam)
            return NoSuchCam(ordinal);
        if (_cams.Count == 1)
            return new Refusal("lastCam", "An order has at least one cam; decline the order instead.");
        _cams.Remove(cam);
        return Changed(by, at, $"Cam {ordinal} taken out of the order.");
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
