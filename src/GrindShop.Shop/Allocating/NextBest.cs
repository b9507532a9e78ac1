using GrindShop.Shop.Buying;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Allocating;

/// <summary>The blanks for one cam in their order, by the stock and the rules of this moment.</summary>
public sealed class NextBest(IDbContextFactory<ShopDb> factory, Catalog catalog)
{
    /// <summary>Best first; empty where the specification is incomplete.</summary>
    public async Task<IReadOnlyList<RankedBlank>> RankAsync(OrderCam cam, CancellationToken cancel = default)
    {
        if (cam.Answer is not { Grind: var grind })
            return [];
        var answer = await catalog.JudgeAsync(grind, cancel);
        return BlankRanking.Of(await OptionsAsync(answer, cancel));
    }

    private async Task<IEnumerable<BlankOption>> OptionsAsync(FeasibilityAnswer answer, CancellationToken cancel)
    {
        var content = await catalog.ContentAsync(cancel);
        await using var db = await factory.CreateDbContextAsync(cancel);
        var coming = await db.NextReceiptsAsync(cancel);
        return from fit in answer.Blanks
               let part = content.Blank(fit.PartNumber)?.Part
               where part is not null
               select new BlankOption(fit, part, coming.ContainsKey(part.Id) ? coming[part.Id] : null);
    }
}
