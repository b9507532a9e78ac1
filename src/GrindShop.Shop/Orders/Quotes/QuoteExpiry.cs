using GrindShop.Shop.Records;
using Microsoft.Extensions.Logging;

namespace GrindShop.Shop.Orders;

/// <summary>Looks every hour for prices that have run out. Several nodes may do it at once: the second finds nothing left.</summary>
public sealed class QuoteExpiry(OrderDesk desk, TimeProvider clock, ILogger<QuoteExpiry> log) : Rounds(TimeSpan.FromHours(1), clock, log)
{
    protected override Task RoundAsync(CancellationToken stop) => desk.ExpireQuotesAsync(stop);
}
