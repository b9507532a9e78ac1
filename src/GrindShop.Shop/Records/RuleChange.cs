using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Records;

/// <summary>One change of something the owner sets: a rule, a limit, a price, a person's work. Lines are only ever added.</summary>
/// <param name="key">What was changed, such as gear/rear/steel/iron or shop/cleanupIn.</param>
/// <param name="subject">The same in the words of the day.</param>
/// <param name="before">What stood there; empty where there was nothing.</param>
/// <param name="after">What stands there since; empty where it was taken away.</param>
public sealed class RuleChange(string key, string subject, string before, string after, string why, string by, DateTimeOffset at)
{
    public long Id { get; private set; }

    public string Key { get; private set; } = key;

    public string Subject { get; private set; } = subject;

    public string Before { get; private set; } = before;

    public string After { get; private set; } = after;

    public string Why { get; private set; } = why;

    public string By { get; private set; } = by;

    public DateTimeOffset At { get; private set; } = at;
}

internal sealed class RuleChangeTable : IEntityTypeConfiguration<RuleChange>
{
    public void Configure(EntityTypeBuilder<RuleChange> table)
    {
        table.ToTable("rule_changes", t => t.HasCheckConstraint("ck_rule_changes_why", "length(why) > 0 AND before <> after"));
        table.HasIndex(change => change.Key);
        table.Property(change => change.Key).HasMaxLength(200);
        table.Property(change => change.By).HasMaxLength(100);
    }
}

public static class ChangeBook
{
    /// <summary>Longest reason for a change, characters.</summary>
    public const int LongestWhy = 200;

    extension(ShopDb db)
    {
        public DbSet<RuleChange> RuleChanges => db.Set<RuleChange>();

        /// <summary>The changes of everything whose key starts so, newest first.</summary>
        public async Task<IReadOnlyList<RuleChange>> HistoryAsync(string key, int most = 500, CancellationToken cancel = default) =>
            await db.Set<RuleChange>().AsNoTracking().Where(change => change.Key.StartsWith(key)).OrderByDescending(change => change.Id).Take(most).ToListAsync(cancel);
    }

    /// <summary>The last change in a sentence, for somebody who did not see it coming.</summary>
    public static string InWords(this RuleChange change) =>
        $"{change.By} changed it in the meantime from \"{change.Before}\" to \"{change.After}\" because: {change.Why.TrimEnd('.')}.";
}
