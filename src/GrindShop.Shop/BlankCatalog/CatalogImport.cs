using System.Text;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.BlankCatalog;

/// <summary>A part that the file would add (no changes named) or change.</summary>
public sealed record ImportRow(int Line, string PartNumber, bool IsNew, IReadOnlyList<FieldChange> Changes);

/// <summary>What a file would do to the catalog; nothing has been written.</summary>
/// <param name="CatalogVersion">The catalog it was compared with.</param>
/// <param name="Rows">Parts that would be added or changed, by the rows that are right.</param>
/// <param name="Unchanged">Parts that are as they are, by the rows that are right.</param>
/// <param name="Problems">Every bad row; while there is one, nothing can be written.</param>
/// <param name="Text">The file.</param>
public sealed record ImportPreview(long CatalogVersion, IReadOnlyList<ImportRow> Rows, int Unchanged, IReadOnlyList<RowProblem> Problems, string Text)
{
    public int WrongRows => Problems.Select(problem => problem.Row).Distinct().Count();

    public bool CanApply => Problems.Count == 0 && Rows.Count > 0;
}

/// <summary>Reads a file of parts, shows what it would change, and writes it all at once, if the catalog is still the one that was shown.</summary>
public sealed class CatalogImport(IDbContextFactory<ShopDb> factory, TimeProvider clock)
{
    public const int MostBytes = 8_000_000, MostRows = 20_000;

    private static readonly UTF8Encoding Strict = new(false, throwOnInvalidBytes: true);

    public async Task<string> ExportAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return BlankColumns.Csv(await db.WholeParts().AsNoTracking().OrderBy(part => part.PartNumber).ToListAsync(cancel));
    }

    /// <summary>The text of a file in UTF-8 (with or without its mark) or in UTF-16 with its mark.</summary>
    public static Outcome<string> Decode(byte[] file)
    {
        if (file.Length > MostBytes)
            return new Refusal("tooLarge", $"The file is larger than {MostBytes / 1_000_000} MB.");
        try
        {
            var text = file is [0xFF, 0xFE, ..] ? Encoding.Unicode.GetString(file) : file is [0xFE, 0xFF, ..] ? Encoding.BigEndianUnicode.GetString(file) : Strict.GetString(file);
            return text.Contains('\0') ? new Refusal("notText", "This is no text file. Save the table as CSV (UTF-8).") : text.TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException error)
        {
            var line = 1 + file.AsSpan(0, Math.Clamp(error.Index, 0, file.Length)).Count((byte)'\n');
            return new Refusal("encoding", $"Line {line} has letters that are not UTF-8. Save the table as CSV (UTF-8).");
        }
    }

    public async Task<ImportPreview> PreviewAsync(string text, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var state = await CatalogState.ReadAsync(db, cancel);
        var file = ImportFile.Read(text, state);
        var rows = file.Parts.Select(row => Compared(row, state)).ToList();
        var changing = rows.FindAll(row => row.IsNew || row.Changes.Count > 0);
        return new ImportPreview(state.Version, changing, rows.Count - changing.Count, file.Problems, text);
    }

    /// <summary>Writes what was shown, all of it in one transaction with a line of history for each part; a catalog that has changed since is refused.</summary>
    public async Task<Outcome<int>> ApplyAsync(ImportPreview preview, string why, string by, CancellationToken cancel = default)
    {
        if (string.IsNullOrWhiteSpace(why))
            return new Refusal("noReason", "Say why the catalog changes, in a few words.");
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        var state = await CatalogState.LockAsync(db, cancel);
        if (state.Version != preview.CatalogVersion)
            return new Refusal("stale", "The catalog has changed since this was shown. Nothing was written; look at the changes again.");
        var file = ImportFile.Read(preview.Text, state);
        if (file.Problems.Count > 0)
            return new Refusal("badRows", file.Problems[0].ToString());
        foreach (var row in file.Parts)
            state.Write(row.Part, state.Parts.GetValueOrDefault(row.Part.PartNumber), why, by, clock.GetUtcNow());
        await db.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return preview.Rows.Count;
    }

    private static ImportRow Compared((int Line, BlankPart Part) row, CatalogState state) => state.Parts.TryGetValue(row.Part.PartNumber, out var before)
        ? new ImportRow(row.Line, row.Part.PartNumber, false, BlankColumns.Changes(before, row.Part))
        : new ImportRow(row.Line, row.Part.PartNumber, true, []);
}
