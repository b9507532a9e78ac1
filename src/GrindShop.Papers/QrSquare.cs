using PdfSharp.Drawing;

namespace GrindShop.Papers;

/// <summary>A QR code on paper, sharp at any size.</summary>
internal static class QrSquare
{
    public static void Draw(Sheet sheet, double x, double y, double side, string text)
    {
        var code = QrModules.Of(text);
        var module = side / code.Size;
        foreach (var (row, start, length) in code.Runs)
            sheet.Ink.DrawRectangle(XBrushes.Black, x + start * module, y + row * module, length * module, module);
    }
}
