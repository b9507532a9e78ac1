using Microsoft.Extensions.Hosting;

namespace GrindShop.Shop.Drafts;

/// <summary>Clears old drafts when the shop starts, and once a day.</summary>
internal sealed class OldDrafts(DraftBook book, TimeProvider clock) : BackgroundService
{
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var daily = new PeriodicTimer(TimeSpan.FromDays(1), clock);
        do
            await book.ClearOldAsync(stoppingToken);
        while (await daily.WaitForNextTickAsync(stoppingToken));
    }
}
