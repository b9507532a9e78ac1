using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Mail;

internal sealed class OutgoingMailTable : IEntityTypeConfiguration<OutgoingMail>
{
    public void Configure(EntityTypeBuilder<OutgoingMail> table)
    {
        table.ToTable("outgoing_mails", t =>
        {
            t.HasCheckConstraint("ck_outgoing_mails_one_line", @"""subject"" !~ '[\r\n]' AND ""to"" !~ '[\r\n]'");
            t.HasCheckConstraint("ck_outgoing_mails_about", "(order_number IS NULL) <> (purchase_number IS NULL)");
            t.HasCheckConstraint("ck_outgoing_mails_lease", "(state = 'Sending') = (lease_until IS NOT NULL)");
            t.HasCheckConstraint("ck_outgoing_mails_sent", "(state IN ('Sent', 'Filed')) = (sent_at IS NOT NULL) AND (sent_at IS NULL) = (via IS NULL)");
        });
        table.HasIndex(mail => mail.EventKey).IsUnique();
        table.HasIndex(mail => mail.MessageId).IsUnique();
        table.HasIndex(mail => mail.OrderNumber);
        table.HasIndex(mail => mail.NextAttemptAt).HasFilter("state = 'Waiting'");
        table.Property(mail => mail.EventKey).HasMaxLength(100);
        table.HasIndex(mail => mail.PurchaseNumber);
        table.Property(mail => mail.OrderNumber).HasMaxLength(20);
        table.Property(mail => mail.PurchaseNumber).HasMaxLength(20);
        table.Ignore(mail => mail.About);
        table.Property(mail => mail.To).HasMaxLength(320);
        table.Property(mail => mail.Subject).HasMaxLength(OutgoingMail.LongestSubject);
        table.Property(mail => mail.Text).HasMaxLength(OutgoingMail.LongestText);
        table.Property(mail => mail.LastError).HasMaxLength(OutgoingMail.LongestError);
        table.Property(mail => mail.MessageId).HasMaxLength(320);
        table.Property(mail => mail.Version).IsRowVersion();
    }
}

internal sealed class IncomingMailTable : IEntityTypeConfiguration<IncomingMail>
{
    public void Configure(EntityTypeBuilder<IncomingMail> table)
    {
        table.ToTable("incoming_mails", t =>
        {
            t.HasCheckConstraint("ck_incoming_mails_order", "fate NOT IN ('NewOrder', 'Added', 'FromAnother') OR order_number IS NOT NULL");
            t.HasCheckConstraint("ck_incoming_mails_reason", "fate <> 'PutAside' OR reason IS NOT NULL");
        });
        table.HasIndex(mail => mail.Source).IsUnique();
        table.HasIndex(mail => new { mail.MessageId, mail.Digest }).IsUnique().HasFilter("message_id IS NOT NULL");
        table.HasIndex(mail => mail.OrderNumber);
        table.HasIndex(mail => new { mail.From, mail.TakenInAt });
        table.Property(mail => mail.Source).HasMaxLength(600);
        table.Property(mail => mail.MessageId).HasMaxLength(320);
        table.Property(mail => mail.Digest).HasMaxLength(64);
        table.Property(mail => mail.From).HasMaxLength(320);
        table.Property(mail => mail.FromName).HasMaxLength(100);
        table.Property(mail => mail.Subject).HasMaxLength(OutgoingMail.LongestSubject);
        table.Property(mail => mail.Text).HasMaxLength(OutgoingMail.LongestText);
        table.Property(mail => mail.Reason).HasMaxLength(OutgoingMail.LongestError);
        table.Property(mail => mail.SettledBy).HasMaxLength(100);
        table.Property(mail => mail.Attachments).HasJson();
        table.Property(mail => mail.Version).IsRowVersion();
        table.HasOne(mail => mail.Original).WithOne().HasForeignKey<OriginalMail>(original => original.MailId).OnDelete(DeleteBehavior.Restrict);
    }
}

internal sealed class OriginalMailTable : IEntityTypeConfiguration<OriginalMail>
{
    public void Configure(EntityTypeBuilder<OriginalMail> table)
    {
        table.ToTable("original_mails");
        table.HasKey(original => original.MailId);
    }
}

internal sealed class MailboxMarkTable : IEntityTypeConfiguration<MailboxMark>
{
    public void Configure(EntityTypeBuilder<MailboxMark> table)
    {
        table.ToTable("mailbox_marks");
        table.HasKey(mark => mark.Mailbox);
        table.Property(mark => mark.Mailbox).HasMaxLength(500);
        table.Property(mark => mark.Problem).HasMaxLength(OutgoingMail.LongestError);
    }
}

public static class MailSets
{
    extension(ShopDb db)
    {
        public DbSet<OutgoingMail> OutgoingMails => db.Set<OutgoingMail>();

        public DbSet<IncomingMail> IncomingMails => db.Set<IncomingMail>();

        public DbSet<MailboxMark> MailboxMarks => db.Set<MailboxMark>();
    }
}
