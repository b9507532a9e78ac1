using System.Buffers.Binary;
using System.Text;

namespace GrindShop.Papers;

/// <summary>The characters a TrueType font has a glyph for: its Unicode table of format 4 (OpenType specification, cmap).</summary>
internal sealed class FontCoverage
{
    private readonly HashSet<int> _characters = [];

    public FontCoverage(byte[] font)
    {
        var cmap = TableAt(font, "cmap"u8);
        for (var i = 0; i < U16(font, cmap + 2); i++)
            if (cmap + U32(font, cmap + 4 + 8 * i + 4) is var map && U16(font, map) == 4)
                Read(font, map);
    }

    public bool Has(Rune rune) => _characters.Contains(rune.Value);

    private void Read(byte[] font, int map)
    {
        var twice = U16(font, map + 6);
        for (var segment = 0; segment < twice; segment += 2)
        {
            int last = U16(font, map + 14 + segment), first = U16(font, map + 16 + twice + segment);
            int shift = U16(font, map + 16 + 2 * twice + segment), offsetAt = map + 16 + 3 * twice + segment;
            for (var character = first; character <= last; character++)
                if (Glyph(font, offsetAt, character, first, shift) != 0)
                    _characters.Add(character);
        }
    }

    private static int Glyph(byte[] font, int offsetAt, int character, int first, int shift)
    {
        var offset = U16(font, offsetAt);
        var glyph = offset == 0 ? character : U16(font, offsetAt + offset + 2 * (character - first));
        return glyph == 0 ? 0 : (glyph + shift) & 0xFFFF;
    }

    private static int TableAt(byte[] font, ReadOnlySpan<byte> tag)
    {
        for (var record = 12; record < 12 + 16 * U16(font, 4); record += 16)
            if (font.AsSpan(record, 4).SequenceEqual(tag))
                return U32(font, record + 8);
        throw new InvalidOperationException("The font has no character table.");
    }

    private static int U16(byte[] font, int at) => BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(at));

    private static int U32(byte[] font, int at) => checked((int)BinaryPrimitives.ReadUInt32BigEndian(font.AsSpan(at)));
}
