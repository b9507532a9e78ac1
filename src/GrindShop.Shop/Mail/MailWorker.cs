using GrindShop.Shop.Records;
using Microsoft.Extensions.Logging;

namespace GrindShop.Shop.Mail;

/// <summary>Sends mails: at once when something changed, and every few seconds those that wait for their time.</summary>
public sealed class MailWorker : Rounds
{
    private readonly SemaphoreSlim _wake = new(0, 1);
    private readonly Postman _postman;
    private readonly ChangeListener _changes;

    public MailWorker(Postman postman, ChangeListener changes, TimeProvider clock, ILogger<MailWorker> log)
        : base(TimeSpan.FromSeconds(15), clock, log)
    {
        (_postman, _changes) = (postman, changes);
        changes.Changed += Wake;
    }

    public override void Dispose()
    {
        _changes.Changed -= Wake;
        base.Dispose();
        _wake.Dispose();
    }

    protected override Task RoundAsync(CancellationToken stop) => _postman.SendDueAsync(stop);

    protected override Task PauseAsync(TimeSpan pause, CancellationToken stop) => _wake.WaitAsync(pause, stop);

    private void Wake(string orderNumber)
    {
        if (_wake.CurrentCount == 0)
            _wake.Release();
    }
}
