using GrindShop.Shop.Blanks;

namespace GrindShop.Papers;

/// <summary>The label on a lot's shelf, 4 by 2 inches: what it is, how many came, where it lies, and a code that opens the lot.</summary>
public static class LotLabelPaper
{
    private const double Width = 288, Height = 144, Edge = 8, Code = 104;

    public static byte[] Print(LotLabelFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var lot = facts.Lot;
        var sheet = Sheet.Label($"Lot {lot.LotNumber}", facts.Shop, facts.PrintedAt, Width, Height);
        var text = Width - Code - 2 * Edge;
        sheet.Text(Edge, 38, lot.LotNumber, Weight.Bold, 36, mostWidth: text);
        sheet.Text(Edge, 58, lot.BlankPart.PartNumber, Weight.SemiBold, 15, mostWidth: text);
        sheet.Text(Edge, 72, $"{lot.BlankPart.Alloy.Words()}, {lot.BlankPart.FormWords()}", Weight.Regular, 8, mostWidth: text);
        sheet.Text(Edge, 84, lot.BlankPart.EngineFamily.Name, Weight.Regular, 8, mostWidth: text);
        sheet.Text(Edge, 100, $"Heat {Or(lot.HeatNumber)}", Weight.SemiBold, 10, mostWidth: text);
        sheet.Text(Edge, 113, $"{Received(lot)} blanks received {Figures.Day(facts.Shop.ShopTime(lot.ReceivedAt))}", Weight.Regular, 9, mostWidth: text);
        sheet.Text(Edge, 132, $"Shelf {lot.Location}", Weight.Bold, 14, mostWidth: Width - 2 * Edge);
        QrSquare.Draw(sheet, Width - Code - 2, 6, Code, facts.LotUrl);
        if (lot.IsQuarantined)
            sheet.Text(Width - Edge, 122, "QUARANTINE", Weight.Bold, 12, Align.Right);
        return sheet.Close();
    }

    private static int Received(BlankLot lot) => lot.Movements.Where(line => line.Kind == StockMovementKind.Receipt).Sum(line => line.OnHandChange);

    private static string Or(string text) => text.Length == 0 ? "not known" : text;
}
