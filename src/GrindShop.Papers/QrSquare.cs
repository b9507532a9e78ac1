using PdfSharp.Drawing;
using QRCoder;

namespace GrindShop.Papers;

/// <summary>A QR code (ISO/IEC 18004, error correction M, quiet zone of four modules) as black runs, sharp at any size.</summary>
internal static class QrSquare
{
    public static void Draw(Sheet sheet, double x, double y, double side, string text)
    {
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        var rows = code.ModuleMatrix;
        var module = side / rows.Count;
        for (var row = 0; row < rows.Count; row++)
            foreach (var (start, length) in Runs(row, rows))
                sheet.Ink.DrawRectangle(XBrushes.Black, x + start * module, y + row * module, length * module, module);
    }

    private static IEnumerable<(int Start, int Length)> Runs(int row, List<System.Collections.BitArray> rows)
    {
        for (var start = 0; start < rows.Count; start++)
        {
            var length = 0;
            while (start + length < rows.Count && rows[row][start + length])
                length++;
            if (length > 0)
                yield return (start, length);
            start += length;
        }
    }
}
