using GrindShop.Shop.Records;
using Microsoft.Extensions.Logging;

namespace GrindShop.Shop.Drafts;

/// <summary>Clears old drafts when the shop starts, and once a day.</summary>
internal sealed class OldDrafts(DraftBook book, TimeProvider clock, ILogger<OldDrafts> log) : Rounds(TimeSpan.FromDays(1), clock, log)
{
    protected override Task RoundAsync(CancellationToken stop) => book.ClearOldAsync(stop);
}
