using PdfSharp.Drawing;
using PdfSharp.Fonts;

namespace GrindShop.Papers;

internal enum Weight
{
    Regular,
    SemiBold,
    Bold,
}

/// <summary>The one typeface of the papers, carried in the assembly (SIL Open Font License, Fonts/LICENSE.txt).</summary>
internal sealed class PaperFonts : IFontResolver
{
    private static readonly Dictionary<string, byte[]> Files = Enum.GetNames<Weight>().ToDictionary(face => face, Read);

    /// <summary>What the typeface can write; all weights have the same characters.</summary>
    public static FontCoverage Coverage { get; } = new(Files[nameof(Weight.Regular)]);

    static PaperFonts() => GlobalFontSettings.FontResolver = new PaperFonts();

    public static XFont Of(Weight weight, double sizePt) => new(weight.ToString(), sizePt);

    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        Files.ContainsKey(familyName) ? new FontResolverInfo(familyName) : null;

    public byte[]? GetFont(string faceName) => Files.GetValueOrDefault(faceName);

    private static byte[] Read(string face)
    {
        using var stream = typeof(PaperFonts).Assembly.GetManifestResourceStream($"GrindShop.Papers.Fonts.{face}.ttf")
            ?? throw new InvalidOperationException($"The font {face}.ttf is not embedded.");
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
