using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Buying;

/// <summary>Gathers what a mill run is weighed on: demand, prices, and which other blanks could have made the past cams.</summary>
public sealed class MillRunBook(IDbContextFactory<ShopDb> factory, Catalog catalog, BuyingBook book)
{
    /// <summary>No more of the past cams are judged, the newest first.</summary>
    private const int MostJudged = 60;

    /// <summary>The facts of a part; null where there is no such part or a newer one replaces it.</summary>
    public async Task<MillRunFacts?> FindAsync(string partNumber, CancellationToken cancel = default)
    {
        var needs = await book.NeedsAsync(cancel);
        if (needs.FirstOrDefault(need => need.Part.PartNumber == partNumber) is not { } need)
            return null;
        var past = await PastAsync([partNumber, .. need.Replaces], cancel);
        var content = await catalog.ContentAsync(cancel);
        var others = needs.Where(other => other.Part.EngineFamily.Code == need.Part.EngineFamily.Code && other.Part.Side == need.Part.Side && other != need);
        var served = await Task.Run(() => Served(past, content), cancel);
        var of = past.Sum(cam => cam.Count);
        return new MillRunFacts(need, of, past.Count == 0 ? null : past.Sum(cam => cam.Price * cam.Count) / of,
            [.. others.Select(other => new AlternativeFacts(other.Terms, served.GetValueOrDefault(other.Part.PartNumber), of)).OrderByDescending(other => other.Served).ThenBy(other => other.Part.Cost)]);
    }

    /// <summary>Cams of one specification that were ordered on the part or one that it replaces.</summary>
    private sealed record PastCam(GrindSpec Grind, int Count, decimal Price);

    private async Task<List<PastCam>> PastAsync(string[] partNumbers, CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var orders = await db.Orders.AsNoTracking().Where(order => OrderStates.Agreed.Contains(order.State) && order.Cams.Any(cam => cam.QuotedPartNumber != null && partNumbers.Contains(cam.QuotedPartNumber)))
            .OrderByDescending(order => order.ReceivedAt).Take(MostJudged).ToListAsync(cancel);
        return [.. orders.SelectMany(order => order.Cams.Where(cam => cam.Answer is not null && partNumbers.Contains(cam.QuotedPartNumber))
            .Select(cam => new PastCam(cam.Answer!.Grind, cam.Quantity, order.Price / order.Cams.Sum(each => each.Quantity))))];
    }

    /// <summary>How many of the past cams each blank of the family can make by today's rules, whatever its stock.</summary>
    private static Dictionary<string, int> Served(IReadOnlyList<PastCam> past, CatalogContent content)
    {
        var served = new Dictionary<string, int>();
        foreach (var cam in past)
            if (content.Family(cam.Grind.EngineFamily) is { } family)
                foreach (var fit in FeasibilityJudge.Judge(cam.Grind, family, content.Blanks.Select(blank => new StockedBlank(blank, 1)), content.Rules).Blanks.Where(fit => fit.Usable))
                    served[fit.PartNumber] = served.GetValueOrDefault(fit.PartNumber) + cam.Count;
        return served;
    }
}
