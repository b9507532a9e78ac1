using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Web.Shell;

namespace GrindShop.Web.Desk;

/// <summary>What is to be done to a cam, while it is typed.</summary>
public sealed class WorkDraft
{
    public WorkKind Kind { get; set; }

    public int Quantity { get; set; } = 1;

    public string? Condition { get; set; }

    public bool IsExpected { get; set; } = true;

    public MeasuredDraft Measured { get; init; } = new();

    public GearDraft Gear { get; init; } = new();

    public static WorkDraft Of(OrderCam cam) => new()
    {
        Kind = cam.Kind,
        Quantity = cam.Quantity,
        Condition = cam.ReceivedCondition,
        IsExpected = cam.Kind == WorkKind.NewGrind || cam.IsExpected,
        Measured = MeasuredDraft.Of(cam.Measured),
        Gear = GearDraft.Of(cam.Gear),
    };

    public CamEntry Entry(CamSpec spec) => new()
    {
        Kind = Kind,
        Quantity = Quantity,
        Spec = spec,
        ReceivedCondition = Kind == WorkKind.NewGrind ? null : Condition,
        IsExpected = IsExpected,
        Measured = Measured.Measured,
        Gear = Gear.Swap,
    };

    /// <summary>Fields that were not touched take the newer value; what was typed stays.</summary>
    public void Follow(WorkDraft was, WorkDraft newer)
    {
        Kind = Carry.Of(was.Kind, Kind, newer.Kind);
        Quantity = Carry.Of(was.Quantity, Quantity, newer.Quantity);
        Condition = Carry.Of(was.Condition, Condition, newer.Condition);
        IsExpected = Carry.Of(was.IsExpected, IsExpected, newer.IsExpected);
        Measured.Follow(was.Measured, newer.Measured);
        Gear.Follow(was.Gear, newer.Gear);
    }
}
