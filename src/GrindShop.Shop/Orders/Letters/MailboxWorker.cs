using GrindShop.Shop.Mail;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace GrindShop.Shop.Orders;

/// <summary>When the mailbox was looked at last and what came of it, on this web node.</summary>
public sealed class MailboxState
{
    public DateTimeOffset? LookedAt { get; internal set; }

    /// <summary>Why the last visit failed; null where it went well.</summary>
    public string? Problem { get; internal set; }
}

/// <summary>Looks into the mailbox as long as the application runs, if one is set up. Several nodes may: every mail is taken in once.</summary>
public sealed class MailboxWorker(Mailbox mailbox, MailIntake intake, MailboxState state, MailSettings settings, TimeProvider clock, ILogger<MailboxWorker> log) : BackgroundService
{
    /// <summary>One visit. What goes wrong is written down and does not stop the next one.</summary>
    public async Task VisitAsync(CancellationToken cancel)
    {
        try
        {
            await mailbox.VisitAsync((source, mail, problem) => intake.TakeOrPutAsideAsync(source, mail, problem, cancel), cancel);
            (state.LookedAt, state.Problem) = (clock.GetUtcNow(), null);
        }
        catch (Exception error) when (!cancel.IsCancellationRequested)
        {
            (state.LookedAt, state.Problem) = (clock.GetUtcNow(), error.Message);
            log.LogWarning("The mailbox could not be read: {Reason}", error.Message);
        }
    }

    protected override async Task ExecuteAsync(CancellationToken stop)
    {
        if (settings.Imap is null)
            return;
        while (!stop.IsCancellationRequested)
        {
            await VisitAsync(stop);
            await Task.Delay(settings.ImapEvery, clock, stop).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }
    }
}
