using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Orders;

internal sealed class QuestionTable : IEntityTypeConfiguration<Question>
{
    public void Configure(EntityTypeBuilder<Question> table)
    {
        table.ToTable("order_questions");
        table.Property(question => question.Field).HasMaxLength(60);
        table.Property(question => question.Text).HasMaxLength(Question.LongestText);
        table.Property(question => question.By).HasMaxLength(100);
        table.Property(question => question.CommandKey).HasMaxLength(100);
        table.Ignore(question => question.LastReply);
        table.HasMany(question => question.Replies).WithOne().HasForeignKey(reply => reply.QuestionId).OnDelete(DeleteBehavior.Restrict);
        table.Navigation(question => question.Replies).AutoInclude();
    }
}

internal sealed class ReplyTable : IEntityTypeConfiguration<Reply>
{
    public void Configure(EntityTypeBuilder<Reply> table)
    {
        table.ToTable("order_replies", t => t.HasCheckConstraint("ck_order_replies_said", "value IS NOT NULL OR words IS NOT NULL"));
        table.HasIndex(reply => new { reply.QuestionId, reply.CommandKey }).IsUnique();
        table.Property(reply => reply.Value).HasMaxLength(Reply.LongestValue);
        table.Property(reply => reply.Words).HasMaxLength(Reply.LongestWords);
        table.Property(reply => reply.By).HasMaxLength(100);
        table.Property(reply => reply.CommandKey).HasMaxLength(100);
    }
}

public static class QuestionSets
{
    extension(ShopDb db)
    {
        public DbSet<Question> Questions => db.Set<Question>();
    }
}
