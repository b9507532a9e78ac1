namespace GrindShop.Shop.Blanks;

/// <summary>How forms, alloys and gears are said to people.</summary>
public static class BlankWords
{
    public static string Words(this BlankForm form) => form switch
    {
        BlankForm.AsCast => "as cast",
        BlankForm.Milled => "lobe-milled",
        _ => "full round",
    };

    /// <summary>The form of its lobes, and that it is a three-piece cam where it is one.</summary>
    public static string FormWords(this BlankPart part) => part.IsThreePiece ? $"three-piece, {part.Form.Words()}" : part.Form.Words();

    public static string Words(this BlankAlloy alloy) => alloy switch
    {
        BlankAlloy.HardenableIron => "hardenable gray iron",
        BlankAlloy.AustemperedDuctileIron => "austempered ductile iron",
        BlankAlloy.ToolSteel => "tool steel",
        _ => $"{alloy.ToString()[5..]} steel",
    };

    public static string Words(this Hardening hardening) => hardening switch
    {
        Hardening.Soft => "soft, hardened after rough grinding",
        Hardening.ToTheBarrel => "hard down to the barrel",
        Hardening.Through => "hard throughout",
        Hardening.Induction => "induction hardened",
        _ => "carburized",
    };

    public static string Words(this CamGear gear) => gear switch
    {
        CamGear.None => "no gear",
        CamGear.HardenableIron => "a gray-iron gear",
        CamGear.AustemperedDuctileIron => "an austempered ductile iron gear",
        CamGear.Steel => "a one-piece steel gear",
        _ => "a pressed-on iron gear",
    };

    public static string Words(this StockMovementKind kind) => kind switch
    {
        StockMovementKind.Receipt => "received",
        StockMovementKind.Allocate => "set aside for a job",
        StockMovementKind.Release => "given back by a job",
        StockMovementKind.Consume => "taken to the grinder",
        StockMovementKind.Scrap => "scrapped",
        StockMovementKind.Count => "counted",
        StockMovementKind.Adjust => "put right",
        StockMovementKind.Quarantine => "put in quarantine",
        StockMovementKind.Clear => "cleared from quarantine",
        StockMovementKind.Relocate => "moved",
        StockMovementKind.Correct => "corrected",
        _ => "measured",
    };
}
