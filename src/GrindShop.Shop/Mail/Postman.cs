using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using MimeKit;

namespace GrindShop.Shop.Mail;

/// <summary>
/// Sends what waits, one mail at a time. A mail is claimed first, in a transaction of its own, so that of several nodes one has it in hand;
/// it is never handed over a second time unless it surely did not go out, or a person says so.
/// </summary>
public sealed class Postman(IDbContextFactory<ShopDb> factory, IMailCarrier carrier, MailWriter writer, TimeProvider clock, ILogger<Postman> log)
{
    /// <summary>Longer than <see cref="Patience"/>, so that a claim only runs out when its node is gone.</summary>
    private static readonly TimeSpan Lease = TimeSpan.FromMinutes(10), Patience = TimeSpan.FromMinutes(3);

    /// <summary>Sends until nothing is due.</summary>
    public async Task SendDueAsync(CancellationToken cancel = default)
    {
        await FindLostAsync(cancel);
        while (await SendNextAsync(cancel))
            cancel.ThrowIfCancellationRequested();
    }

    private async Task<bool> SendNextAsync(CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await ClaimAsync(db, cancel) is not { } mail)
            return false;
        Mark(mail, await CarryAsync(mail, cancel));
        await SaveAsync(db, mail);
        return true;
    }

    private async Task<OutgoingMail?> ClaimAsync(ShopDb db, CancellationToken cancel)
    {
        var now = clock.GetUtcNow();
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        var due = await db.OutgoingMails.FromSql($"""
            SELECT *, xmin FROM outgoing_mails WHERE state = 'Waiting' AND next_attempt_at <= {now}
            ORDER BY next_attempt_at, id LIMIT 1 FOR UPDATE SKIP LOCKED
            """).ToListAsync(cancel);
        if (due is not [var mail])
            return null;
        mail.Claim(now, Lease);
        await db.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return mail;
    }

    private async Task<CarryResult> CarryAsync(OutgoingMail mail, CancellationToken cancel)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        patience.CancelAfter(Patience);
        var written = await WriteAsync(mail, patience.Token);
        return written.Succeeded ? await carrier.CarryAsync(written.Value, patience.Token) : new CarryResult(Carried.NotNow, written.Refusal.Reason);
    }

    /// <summary>Whatever goes wrong while the mail is being written, it has surely not gone out and is tried again.</summary>
    private async Task<Outcome<MimeMessage>> WriteAsync(OutgoingMail mail, CancellationToken cancel)
    {
        try
        {
            return await writer.WriteAsync(mail, cancel);
        }
        catch (Exception error)
        {
            log.LogError(error, "Mail {Id} could not be written.", mail.Id);
            return new Refusal("notWritten", $"It could not be written: {error.Message}");
        }
    }

    private void Mark(OutgoingMail mail, CarryResult result)
    {
        var now = clock.GetUtcNow();
        if (result.How == Carried.Done)
            mail.Done(carrier.WhenDone, carrier.Via, now);
        else if (result.How == Carried.Unsure)
            mail.MayHaveGone($"The connection broke while it was being sent: {result.Error}");
        else if (result.How == Carried.NotNow && RetryRule.Pause(mail.Attempts, Random.Shared.NextDouble()) is { } pause)
            mail.TryLater(result.Error ?? "", now + pause);
        else
            mail.Fail(result.Error ?? "");
        if (result.How != Carried.Done)
            log.LogWarning("Mail {Id} about {About}, attempt {Attempt}: {Error}", mail.Id, mail.About, mail.Attempts, result.Error);
    }

    /// <summary>What became of the mail is written down even when the node is being stopped.</summary>
    private async Task SaveAsync(ShopDb db, OutgoingMail mail)
    {
        try
        {
            await db.SaveAndTellAsync(mail.About, CancellationToken.None);
        }
        catch (DbUpdateConcurrencyException)
        {
            log.LogWarning("Mail {Id}: its claim had run out before it was marked as {State}.", mail.Id, mail.State);
        }
    }

    /// <summary>A claim that ran out: its node stopped while it had the mail in hand, and nobody knows how far it came.</summary>
    private async Task FindLostAsync(CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var now = clock.GetUtcNow();
        foreach (var mail in await db.OutgoingMails.Where(mail => mail.State == MailState.Sending && mail.LeaseUntil < now).ToListAsync(cancel))
        {
            mail.MayHaveGone("The shop's computer stopped while this was being sent.");
            await SaveAsync(db, mail);
        }
    }
}
