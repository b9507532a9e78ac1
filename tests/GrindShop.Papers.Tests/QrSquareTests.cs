using QRCoder;
using UglyToad.PdfPig.Core;

namespace GrindShop.Papers.Tests;

public class QrSquareTests
{
    /// <summary>Every module of the printed square against the matrix (ISO/IEC 18004) that the code library makes for the address.</summary>
    [Fact]
    public void The_printed_square_is_the_code_of_the_address()
    {
        using var generator = new QRCodeGenerator();
        var matrix = generator.CreateQrCode(Scene.Url, QRCodeGenerator.ECCLevel.M).ModuleMatrix;
        var page = new PaperText(TravelerPaper.Print(new Scene().Traveler())).Pages[0];
        var runs = page.Paths.Where(path => path.IsFilled).Select(path => path.GetBoundingRectangle()).OfType<PdfRectangle>()
            .Where(box => box.Bottom > 660 && box.Left > 480).ToList();
        // The outer ring of the finder patterns spans the whole code less its quiet zone of four modules a side.
        double left = runs.Min(box => box.Left), top = runs.Max(box => box.Top), module = (runs.Max(box => box.Right) - left) / (matrix.Count - 8);
        for (var row = 0; row < matrix.Count; row++)
            for (var column = 0; column < matrix.Count; column++)
                Assert.Equal(matrix[row][column], IsBlack(left + (column - 3.5) * module, top - (row - 3.5) * module));
        bool IsBlack(double x, double y) => runs.Any(box => box.Left < x && x < box.Right && box.Bottom < y && y < box.Top);
    }
}
