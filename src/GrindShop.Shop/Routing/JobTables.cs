using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Routing;

internal sealed class JobTable : IEntityTypeConfiguration<Job>
{
    public void Configure(EntityTypeBuilder<Job> table)
    {
        table.ToTable("jobs", t => t.HasCheckConstraint("ck_jobs_ended", "(ended_at IS NULL) = (ended_as IS NULL) AND (ended_at IS NULL OR shipped_at IS NULL)"));
        table.HasIndex(job => job.Code).IsUnique();
        table.Property(job => job.Code).HasMaxLength(20);
        table.Property(job => job.Version).IsRowVersion();
        table.Ignore(job => job.Current);
        table.Ignore(job => job.Fit);
        table.Property(job => job.LotFit).HasJson();
        table.Property(job => job.Replaces).HasMaxLength(20);
        table.HasOne(job => job.Order).WithMany().HasForeignKey(job => job.OrderId).OnDelete(DeleteBehavior.Restrict);
        table.HasOne(job => job.Cam).WithMany().HasForeignKey(job => new { job.OrderId, job.OrderCamId })
            .HasPrincipalKey(cam => new { cam.OrderId, cam.Id }).OnDelete(DeleteBehavior.Restrict);
        table.HasOne(job => job.BlankLot).WithMany().HasForeignKey(job => job.BlankLotId).OnDelete(DeleteBehavior.Restrict);
        table.HasMany(job => job.Steps).WithOne().HasForeignKey(step => step.JobId).OnDelete(DeleteBehavior.Restrict);
        table.HasMany(job => job.History).WithOne().HasForeignKey(line => line.JobId).OnDelete(DeleteBehavior.Restrict);
    }
}

internal sealed class JobStepTable : IEntityTypeConfiguration<JobStep>
{
    public void Configure(EntityTypeBuilder<JobStep> table)
    {
        table.ToTable("job_steps", t => t.HasCheckConstraint("ck_job_steps_done", "(done_at IS NULL) = (done_by IS NULL)"));
        table.HasIndex(step => new { step.JobId, step.Ordinal }).IsUnique();
        table.HasIndex(step => new { step.JobId, step.Stage }).IsUnique();
        table.Property(step => step.DoneBy).HasMaxLength(100);
        table.HasOne(step => step.Vendor).WithMany().HasForeignKey(step => step.VendorId).OnDelete(DeleteBehavior.Restrict);
    }
}

internal sealed class JobEventTable : IEntityTypeConfiguration<JobEvent>
{
    public void Configure(EntityTypeBuilder<JobEvent> table)
    {
        table.ToTable("job_events");
        table.HasIndex(line => new { line.JobId, line.CommandKey }).IsUnique();
        table.Property(line => line.What).HasMaxLength(40);
        table.Property(line => line.By).HasMaxLength(100);
        table.Property(line => line.CommandKey).HasMaxLength(100);
    }
}

public static class JobSets
{
    extension(ShopDb db)
    {
        public DbSet<Job> Jobs => db.Set<Job>();

        /// <summary>
        /// Locks a job and then its order until the transaction ends; read them afterwards. Whoever locks several kinds of rows does it in this order:
        /// <see cref="Turn.Blanks"/> where several parts may be touched, jobs, orders, lots.
        /// </summary>
        internal async Task LockJobAsync(string code, CancellationToken cancel)
        {
            await db.Database.ExecuteSqlAsync($"SELECT 1 FROM jobs WHERE code = {code} FOR UPDATE", cancel);
            await db.Database.ExecuteSqlAsync($"SELECT 1 FROM orders WHERE id = (SELECT order_id FROM jobs WHERE code = {code}) FOR UPDATE", cancel);
        }
    }
}
