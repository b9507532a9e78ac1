using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace GrindShop.Shop.Records;

/// <summary>The same work again and again, as long as the application runs. Whatever goes wrong in a round is written down, and the next one comes.</summary>
public abstract class Rounds(TimeSpan every, TimeProvider clock, ILogger log) : BackgroundService
{
    protected TimeProvider Clock => clock;

    protected ILogger Log => log;

    protected sealed override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        while (!stoppingToken.IsCancellationRequested)
        {
            await TryAsync(stoppingToken);
            await PauseAsync(every, stoppingToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }
    }

    protected abstract Task RoundAsync(CancellationToken stop);

    protected virtual Task PauseAsync(TimeSpan pause, CancellationToken stop) => Task.Delay(pause, clock, stop);

    private async Task TryAsync(CancellationToken stop)
    {
        try
        {
            await RoundAsync(stop);
        }
        catch (Exception) when (stop.IsCancellationRequested)
        {
            // The application ends; so does its work.
        }
        catch (Exception error)
        {
            log.LogError(error, "{Work} is interrupted; it goes on in {Pause}.", GetType().Name, every);
        }
    }
}
