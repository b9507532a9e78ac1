using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Blanks;

/// <summary>One figure or word of a part before and after a change.</summary>
public sealed record FieldChange(string Column, string Before, string After);

/// <summary>One line of a part's history: who, when, what, why. Lines are only ever added.</summary>
public sealed class BlankPartEvent(string what, string by, DateTimeOffset at, string why, IReadOnlyList<FieldChange> changes)
{
    public long Id { get; private set; }

    public int BlankPartId { get; private set; }

    public BlankPart? BlankPart { get; init; }

    public string What { get; private set; } = what;

    public string By { get; private set; } = by;

    public DateTimeOffset At { get; private set; } = at;

    public string Why { get; private set; } = why;

    public IReadOnlyList<FieldChange> Changes { get; private set; } = changes;
}

/// <summary>A picture or drawing of a part.</summary>
public sealed class BlankFile
{
    public int Id { get; private set; }

    public required int BlankPartId { get; init; }

    public required string Name { get; init; }

    public required string MediaType { get; init; }

    public required byte[] Content { get; init; }

    public required string By { get; init; }

    public required DateTimeOffset At { get; init; }
}

internal sealed class BlankPartEventTable : IEntityTypeConfiguration<BlankPartEvent>
{
    public void Configure(EntityTypeBuilder<BlankPartEvent> table)
    {
        table.ToTable("blank_part_events");
        table.Property(line => line.What).HasMaxLength(100);
        table.Property(line => line.By).HasMaxLength(100);
        table.Property(line => line.Why).HasMaxLength(500);
        table.Property(line => line.Changes).HasJson();
        table.HasOne(line => line.BlankPart).WithMany().HasForeignKey(line => line.BlankPartId).OnDelete(DeleteBehavior.Restrict);
    }
}

internal sealed class BlankFileTable : IEntityTypeConfiguration<BlankFile>
{
    public void Configure(EntityTypeBuilder<BlankFile> table)
    {
        table.ToTable("blank_files", t => t.HasCheckConstraint("ck_blank_files_size", "octet_length(content) BETWEEN 1 AND 5242880"));
        table.Property(file => file.Name).HasMaxLength(100);
        table.Property(file => file.MediaType).HasMaxLength(60);
        table.Property(file => file.By).HasMaxLength(100);
        table.HasOne<BlankPart>().WithMany().HasForeignKey(file => file.BlankPartId).OnDelete(DeleteBehavior.Restrict);
    }
}

public static class BlankHistorySets
{
    extension(ShopDb db)
    {
        public DbSet<BlankPartEvent> BlankPartEvents => db.Set<BlankPartEvent>();

        public DbSet<BlankFile> BlankFiles => db.Set<BlankFile>();
    }
}
