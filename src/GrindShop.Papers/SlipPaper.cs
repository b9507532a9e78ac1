using GrindShop.Shop.Orders;

namespace GrindShop.Papers;

/// <summary>A slip to hand over at the desk, 4 by 3 inches: the order's number and the code with which it is followed.</summary>
public static class SlipPaper
{
    private const double Width = 288, Height = 216, Edge = 12, Code = 112, Text = Width - Code - 2 * Edge;

    public static byte[] Print(SlipFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var (order, shop) = (facts.Order, facts.Shop);
        var sheet = Sheet.Label($"Slip {order.Number}", shop, facts.PrintedAt, Width, Height);
        sheet.Text(Edge, 24, shop.ShopName, Weight.Bold, 13, mostWidth: Width - 2 * Edge);
        sheet.Text(Edge, 36, $"{shop.Address} · {shop.Phone}", Weight.Regular, 7.5, mostWidth: Width - 2 * Edge);
        sheet.Rule(Edge, 43, Width - 2 * Edge);
        sheet.Text(Edge, 74, order.Number, Weight.Bold, 30, mostWidth: Text);
        sheet.Text(Edge, 88, order.Contact.Name ?? order.Customer.Name, Weight.SemiBold, 10, mostWidth: Text);
        sheet.Text(Edge, 101, $"Taken in {Figures.Day(shop.Today(order.ReceivedAt))}", Weight.Regular, 8.5, mostWidth: Text);
        Cams(sheet, order);
        QrSquare.Draw(sheet, Width - Code - Edge / 2, 50, Code, facts.TrackUrl);
        sheet.Rule(Edge, 166, Width - 2 * Edge);
        sheet.Text(Edge, 180, "Follow it: scan, or type the code at", Weight.Regular, 7.5);
        sheet.Text(Width - Edge, 180, Spaced(order.TrackingCode), Weight.Bold, 11, Align.Right);
        sheet.Text(Edge, 192, facts.TrackUrl[..facts.TrackUrl.LastIndexOf('/')], Weight.SemiBold, 8, mostWidth: Width - 2 * Edge);
        sheet.Text(Edge, 204, "Whoever has this code can see the order: keep the slip.", Weight.Regular, 7.5, mostWidth: Width - 2 * Edge);
        return sheet.Close();
    }

    /// <summary>What is to be done, as far as the room goes.</summary>
    private static void Cams(Sheet sheet, Order order) =>
        sheet.Lines(Edge, 117, Text, string.Join("; ", order.Cams.Where(cam => cam.Quantity > 0).Select(Said)), Weight.Regular, 8.5, mostLines: 4);

    private static string Said(OrderCam cam) => $"{Figures.Capital(cam.Kind.Words())}{(cam.Spec.EngineFamily is { } engine ? $", {engine}" : "")}{(cam.Quantity > 1 ? $" x {cam.Quantity}" : "")}";

    /// <summary>In groups that can be read out.</summary>
    private static string Spaced(string code) => string.Join(' ', code.Chunk(5).Select(group => new string(group)));
}
