using GrindShop.Shop.Records;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace GrindShop.Shop.Mail;

/// <summary>Sends mails as long as the application runs: at once when something changed, and every few seconds for those that wait for their time.</summary>
public sealed class MailWorker(Postman postman, ChangeListener changes, ILogger<MailWorker> log) : BackgroundService
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(15);

    private readonly SemaphoreSlim _wake = new(0, 1);

    public override void Dispose()
    {
        base.Dispose();
        _wake.Dispose();
    }

    protected override async Task ExecuteAsync(CancellationToken stop)
    {
        changes.Changed += Wake;
        try
        {
            while (!stop.IsCancellationRequested)
                await RoundAsync(stop);
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
        }
        finally
        {
            changes.Changed -= Wake;
        }
    }

    /// <summary>Whatever goes wrong in a round, the next one comes.</summary>
    private async Task RoundAsync(CancellationToken stop)
    {
        try
        {
            await postman.SendDueAsync(stop);
        }
        catch (Exception error) when (!stop.IsCancellationRequested)
        {
            log.LogError(error, "Sending mails is interrupted; it goes on in {Pause}.", Pause);
        }
        await _wake.WaitAsync(Pause, stop);
    }

    private void Wake(string orderNumber)
    {
        if (_wake.CurrentCount == 0)
            _wake.Release();
    }
}
