using GrindShop.Shop.Mail;
using GrindShop.Shop.Records;
using MailKit.Security;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;

namespace GrindShop.Shop.Orders;

/// <summary>Looks into the mailbox as long as the application runs, if one is set up. Of several nodes one does at a time.</summary>
public sealed class MailboxWorker(IDbContextFactory<ShopDb> factory, Mailbox mailbox, MailIntake intake, MailSettings settings, TimeProvider clock, ILogger<MailboxWorker> log)
    : Rounds(settings.ImapEvery, clock, log)
{
    /// <summary>One visit; none where another node is at it. What goes wrong is written down and does not stop the next one.</summary>
    public async Task VisitAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await db.Database.OpenConnectionAsync(cancel);
        if (!await db.Database.SqlQuery<bool>($"SELECT pg_try_advisory_lock({Turn.Mailbox}) AS \"Value\"").SingleAsync(cancel))
            return;
        try
        {
            await VisitAsync(db, cancel);
        }
        finally
        {
            await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_unlock({Turn.Mailbox})", CancellationToken.None);
        }
    }

    private async Task VisitAsync(ShopDb db, CancellationToken cancel)
    {
        var mark = await db.MailboxMarks.SingleOrDefaultAsync(mark => mark.Mailbox == mailbox.Name, cancel) ?? db.Add(new MailboxMark(mailbox.Name)).Entity;
        string? problem = null;
        try
        {
            await mailbox.VisitAsync(mark, () => db.SaveChangesAsync(cancel), arrived => intake.TakeAsync(arrived, cancel: cancel), cancel);
        }
        catch (Exception error) when (!cancel.IsCancellationRequested)
        {
            problem = Words(error);
            Log.LogWarning("The mailbox {Mailbox} could not be read: {Reason}", mailbox.Name, error.Message);
        }
        var told = mark.Problem != problem || mark.LookedAt is null;
        mark.Looked(Clock.GetUtcNow(), problem);
        await (told ? db.SaveAndTellAsync("mail", cancel) : db.SaveChangesAsync(cancel));
    }

    private static string Words(Exception error) => error switch
    {
        AuthenticationException => $"the server refused the user or the password: {error.Message}",
        OperationCanceledException => "the server did not answer in time.",
        _ => error.Message,
    };

    protected override Task RoundAsync(CancellationToken stop) => settings.Imap is null ? Task.CompletedTask : VisitAsync(stop);
}
