using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Feasibility;

public enum RuleVerdict
{
    Ok,
    Caution,
    No,
}

/// <summary>One of the owner's rules of what goes with what: a verdict and its reason in words, which customers and the shop read as they stand.</summary>
public abstract class CompatibilityRule
{
    private RuleVerdict _verdict;
    private string _reason = "";

    public int Id { get; private set; }

    public required RuleVerdict Verdict { get => _verdict; init => _verdict = value; }

    public required string Reason { get => _reason; init => _reason = value; }

    /// <summary>Changes with every write; 0 where nobody has written the rule yet.</summary>
    public uint Version { get; private set; }

    /// <summary>Its name in histories and addresses, such as gear/rear/steel/iron.</summary>
    public abstract string Key { get; }

    /// <summary>What it is about, in words.</summary>
    public abstract string Subject { get; }

    /// <summary>The verdict with its reason, for histories.</summary>
    public string Words => $"{Verdict.Words()}: {Reason}";

    internal void Change(RuleVerdict verdict, string reason) => (_verdict, _reason) = (verdict, reason);

    /// <summary>Parts of a key, each choice as the JSON writes it.</summary>
    protected static string KeyOf(string kind, params Enum[] choices) =>
        string.Join('/', choices.Select(choice => choice.ToString()).Select(name => char.ToLowerInvariant(name[0]) + name[1..]).Prepend(kind));

    protected static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}

/// <summary>What all tables of rules have in common.</summary>
internal abstract class RuleTable<TRule>(string name) : IEntityTypeConfiguration<TRule>
    where TRule : CompatibilityRule
{
    public virtual void Configure(EntityTypeBuilder<TRule> table)
    {
        table.ToTable(name, t => t.HasCheckConstraint($"ck_{name}_reason", "length(reason) > 0"));
        table.Property(rule => rule.Version).IsRowVersion();
    }
}

public static class RuleSets
{
    public static string Words(this RuleVerdict verdict) => verdict switch
    {
        RuleVerdict.Ok => "OK",
        RuleVerdict.Caution => "caution",
        _ => "no",
    };

    extension(ShopDb db)
    {
        public DbSet<GearRule> GearRules => db.Set<GearRule>();

        public DbSet<LifterRule> LifterRules => db.Set<LifterRule>();

        public DbSet<PumpRule> PumpRules => db.Set<PumpRule>();

        public DbSet<TradeRule> TradeRules => db.Set<TradeRule>();

        /// <summary>Every rule that somebody has written.</summary>
        public async Task<IReadOnlyList<CompatibilityRule>> WrittenRulesAsync(CancellationToken cancel) =>
        [
            .. await db.GearRules.ToListAsync(cancel),
            .. await db.LifterRules.ToListAsync(cancel),
            .. await db.PumpRules.ToListAsync(cancel),
            .. await db.TradeRules.ToListAsync(cancel),
        ];
    }
}
