using System.Text;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.BlankCatalog;

/// <summary>Keeps pictures and drawings of parts. What a file is follows from its bytes, never from its name.</summary>
public sealed class BlankFileStore(IDbContextFactory<ShopDb> factory, TimeProvider clock)
{
    public const int MostBytes = 5 * 1024 * 1024;

    public async Task<Outcome<BlankFile>> AddAsync(BlankPart part, string name, byte[] content, string by, CancellationToken cancel = default)
    {
        if (content.Length is 0 or > MostBytes)
            return new Refusal("badSize", "The file is empty or larger than 5 MB.");
        if (MediaType(content) is not { } type)
            return new Refusal("notAPicture", "Only PNG, JPEG, PDF and SVG files are kept.");
        await using var db = await factory.CreateDbContextAsync(cancel);
        var file = new BlankFile { BlankPartId = part.Id, Name = Tidy(name), MediaType = type, Content = content, By = by, At = clock.GetUtcNow() };
        db.Add(file);
        db.Add(new BlankPartEvent("file added", by, file.At, file.Name, []) { BlankPart = await db.BlankParts.SingleAsync(p => p.Id == part.Id, cancel) });
        await db.SaveChangesAsync(cancel);
        return file;
    }

    public async Task<BlankFile?> FindAsync(int id, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.BlankFiles.AsNoTracking().SingleOrDefaultAsync(file => file.Id == id, cancel);
    }

    /// <summary>The kind of file by its first bytes; null for any other.</summary>
    public static string? MediaType(ReadOnlySpan<byte> content) =>
        content.StartsWith((ReadOnlySpan<byte>)[0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A]) ? "image/png"
        : content.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]) ? "image/jpeg"
        : content.StartsWith("%PDF-"u8) ? "application/pdf"
        : IsSvg(Encoding.UTF8.GetString(content[..Math.Min(content.Length, 1_000)])) ? "image/svg+xml"
        : null;

    private static bool IsSvg(string head)
    {
        var text = head.TrimStart('\uFEFF', ' ', '\t', '\r', '\n');
        return text.StartsWith("<svg", StringComparison.OrdinalIgnoreCase) || (text.StartsWith("<?xml", StringComparison.OrdinalIgnoreCase) && text.Contains("<svg", StringComparison.OrdinalIgnoreCase));
    }

    private static string Tidy(string name)
    {
        var tidy = string.Concat(Path.GetFileName(name).Where(letter => !char.IsControl(letter) && letter is not ('"' or '\\' or '/'))).Trim();
        return tidy.Length == 0 ? "file" : tidy[..Math.Min(tidy.Length, 100)];
    }
}
