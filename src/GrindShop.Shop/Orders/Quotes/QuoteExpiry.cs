using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Npgsql;

namespace GrindShop.Shop.Orders;

/// <summary>Looks every hour for prices that have run out. Several nodes may do it at once: the second finds nothing left.</summary>
public sealed class QuoteExpiry(OrderDesk desk, TimeProvider clock, ILogger<QuoteExpiry> log) : BackgroundService
{
    private static readonly TimeSpan Often = TimeSpan.FromHours(1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(Often, clock);
        do
        {
            await LookAsync(stoppingToken);
        }
        while (await timer.WaitForNextTickAsync(stoppingToken));
    }

    /// <summary>A database that does not answer is asked again the next time.</summary>
    private async Task LookAsync(CancellationToken stoppingToken)
    {
        try
        {
            await desk.ExpireQuotesAsync(stoppingToken);
        }
        catch (NpgsqlException error)
        {
            log.LogWarning(error, "Quotes that ran out could not be looked for.");
        }
    }
}
