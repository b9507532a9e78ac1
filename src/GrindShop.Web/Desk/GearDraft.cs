using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Web.Shell;

namespace GrindShop.Web.Desk;

/// <summary>The gears of a replacement while they are typed.</summary>
public sealed class GearDraft
{
    public string Marks { get; set; } = "";

    public CamGear Old { get; set; } = CamGear.PressedIron;

    public CamGear New { get; set; } = CamGear.PressedIron;

    public GearSwap Swap => new() { Marks = Marks.Trim(), Old = Old, New = New };

    /// <inheritdoc cref="WorkDraft.Follow"/>
    public void Follow(GearDraft was, GearDraft newer)
    {
        Marks = Carry.Of(was.Marks, Marks, newer.Marks);
        Old = Carry.Of(was.Old, Old, newer.Old);
        New = Carry.Of(was.New, New, newer.New);
    }

    public static GearDraft Of(GearSwap? gear) => gear is null ? new GearDraft() : new GearDraft { Marks = gear.Marks, Old = gear.Old, New = gear.New };
}
