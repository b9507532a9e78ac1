using System.Collections;
using QRCoder;

namespace GrindShop.Papers;

/// <summary>A QR code (ISO/IEC 18004, error correction M, quiet zone of four modules) as dark runs along its rows, in modules.</summary>
/// <param name="Size">Modules along a side.</param>
public sealed record QrModules(int Size, IReadOnlyList<(int Row, int Start, int Length)> Runs)
{
    public static QrModules Of(string text)
    {
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        return new QrModules(code.ModuleMatrix.Count, [.. code.ModuleMatrix.SelectMany((row, index) => Dark(row).Select(run => (index, run.Start, run.Length)))]);
    }

    private static IEnumerable<(int Start, int Length)> Dark(BitArray row)
    {
        for (var start = 0; start < row.Count; start++)
        {
            var length = 0;
            while (start + length < row.Count && row[start + length])
                length++;
            if (length > 0)
                yield return (start, length);
            start += length;
        }
    }
}
