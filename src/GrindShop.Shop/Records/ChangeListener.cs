using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Npgsql;

namespace GrindShop.Shop.Records;

/// <summary>Hears from the database what changes, on this web node or another, and tells the open pages.</summary>
public sealed class ChangeListener(NpgsqlDataSource source, ILogger<ChangeListener> log) : BackgroundService
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(2);

    /// <summary>The number of the order that changed, or <see cref="ChangeNotice.Catalog"/>; raised on a thread of the listener's.</summary>
    public event Action<string>? Changed;

    protected override async Task ExecuteAsync(CancellationToken stop)
    {
        while (!stop.IsCancellationRequested)
        {
            try
            {
                await ListenAsync(stop);
            }
            catch (Exception error) when (error is NpgsqlException or TimeoutException or System.Net.Sockets.SocketException)
            {
                log.LogWarning("Change notices are interrupted, trying again: {Reason}", error.Message);
                await Task.Delay(Pause, stop).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            }
            catch (OperationCanceledException) when (stop.IsCancellationRequested)
            {
                return;
            }
        }
    }

    private async Task ListenAsync(CancellationToken stop)
    {
        await using var connection = await source.OpenConnectionAsync(stop);
        connection.Notification += (_, notice) => Raise(notice.Payload);
        await using (var listen = new NpgsqlCommand($"LISTEN {ChangeNotice.Channel}", connection))
            await listen.ExecuteNonQueryAsync(stop);
        Raise(ChangeNotice.Catalog); // whatever was told while nobody listened: every open page reads anew
        while (true)
            await connection.WaitAsync(stop);
    }

    private void Raise(string changed)
    {
        foreach (var handler in Changed?.GetInvocationList() ?? [])
        {
            try
            {
                ((Action<string>)handler)(changed);
            }
            catch (Exception error) when (error is ObjectDisposedException or InvalidOperationException)
            {
                log.LogDebug(error, "A page that was closing did not take a change notice.");
            }
        }
    }
}
