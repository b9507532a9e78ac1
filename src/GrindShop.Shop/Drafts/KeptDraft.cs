using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Drafts;

/// <summary>A form that somebody has begun, with every text as it was typed. Whoever has its code may go on with it, on any device.</summary>
public sealed class KeptDraft
{
    /// <summary>More than a form can hold, less than somebody may misuse.</summary>
    public const int LongestTexts = 20_000;

    public const int CodeLength = 20;

    public static readonly TimeSpan Life = TimeSpan.FromDays(90);

    private KeptDraft()
    {
    }

    public int Id { get; private set; }

    public string Code { get; private set; } = "";

    /// <summary>The key under which it will be sent: sent from two devices it is one enquiry.</summary>
    public string SubmitKey { get; private set; } = "";

    /// <summary>Texts by the field's path; blank ones are left out.</summary>
    public IReadOnlyDictionary<string, string> Texts { get; private set; } = new Dictionary<string, string>();

    /// <summary>Counts the savings; who saves names the one it was read at.</summary>
    public int Revision { get; private set; }

    public DateTimeOffset ChangedAt { get; private set; }

    public static KeptDraft Begin(string submitKey, IReadOnlyDictionary<string, string> texts, DateTimeOffset at)
    {
        var draft = new KeptDraft { Code = SecretCode.Draw(CodeLength), SubmitKey = submitKey };
        draft.Keep(texts, at);
        return draft;
    }

    public void Keep(IReadOnlyDictionary<string, string> texts, DateTimeOffset at)
    {
        Texts = Written(texts);
        Revision++;
        ChangedAt = at;
    }

    /// <summary>Null where they can be kept.</summary>
    public static Refusal? Refuse(IReadOnlyDictionary<string, string> texts) =>
        Written(texts).Sum(text => text.Key.Length + text.Value.Length + 8) <= LongestTexts / 4 * 3
            ? null
            : new Refusal("tooLong", "This is more text than a draft holds; it is not kept. Shorten the notes.");

    /// <summary>Without blanks and without the one letter that the database cannot write.</summary>
    private static Dictionary<string, string> Written(IReadOnlyDictionary<string, string> texts) =>
        texts.Where(text => text.Value.Length > 0).ToDictionary(text => text.Key, text => text.Value.Replace("\0", "", StringComparison.Ordinal));
}

internal sealed class KeptDraftTable : IEntityTypeConfiguration<KeptDraft>
{
    public void Configure(EntityTypeBuilder<KeptDraft> table)
    {
        table.ToTable("kept_drafts", t => t.HasCheckConstraint("ck_kept_drafts_size", $"length(texts::text) <= {4 * KeptDraft.LongestTexts}"));
        table.HasIndex(draft => draft.Code).IsUnique();
        table.HasIndex(draft => draft.SubmitKey).IsUnique();
        table.HasIndex(draft => draft.ChangedAt);
        table.Property(draft => draft.Code).HasMaxLength(KeptDraft.CodeLength);
        table.Property(draft => draft.SubmitKey).HasMaxLength(200);
        table.Property(draft => draft.Texts).HasJson();
        table.Property(draft => draft.Revision).IsConcurrencyToken();
    }
}

public static class DraftSets
{
    extension(ShopDb db)
    {
        public DbSet<KeptDraft> KeptDrafts => db.Set<KeptDraft>();
    }
}
