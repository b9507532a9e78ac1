using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Blanks;

/// <summary>Blanks that have come in, counted.</summary>
public sealed record Receipt
{
    public required string PartNumber { get; init; }

    /// <summary>Blanks counted, whatever the delivery note says.</summary>
    public required int Quantity { get; init; }

    /// <summary>Where the lot lies.</summary>
    public required string Location { get; init; }

    /// <summary>Code of the vendor; null means the part's usual supplier.</summary>
    public string? SupplierCode { get; init; }

    public string? HeatNumber { get; init; }

    public string? Certificate { get; init; }

    /// <summary>The line of a purchase order it came on, in words such as "P1004 line 2".</summary>
    public string? PurchaseLine { get; init; }

    /// <summary>The command's own key: the same receipt a second time answers with the same lot.</summary>
    public required string Key { get; init; }
}

/// <summary>Receives blanks into stock: one lot with its number, one line of the stock book.</summary>
public sealed class Receiving(IDbContextFactory<ShopDb> factory, TimeProvider clock)
{
    /// <summary>Receives in a transaction of its own. A repeated key answers with the lot that it made and changes nothing.</summary>
    public async Task<Outcome<BlankLot>> ReceiveAsync(Receipt receipt, string by, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        var outcome = await ReceiveAsync(db, receipt, by, cancel);
        if (!outcome.Succeeded || outcome.Value.Id != 0)
            return outcome;
        await db.SaveAndTellAsync(BlankNotice.Of(outcome.Value), cancel);
        await transaction.CommitAsync(cancel);
        return outcome;
    }

    /// <summary>
    /// Adds the lot to a unit of work that the caller saves, in a transaction that the caller has begun: receipts with one key wait for each other
    /// until its end.
    /// </summary>
    public async Task<Outcome<BlankLot>> ReceiveAsync(ShopDb db, Receipt receipt, string by, CancellationToken cancel = default)
    {
        await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock(hashtextextended({receipt.Key}, 0))", cancel);
        if (await db.BlankLots.Include(lot => lot.BlankPart).SingleOrDefaultAsync(lot => lot.ReceiptKey == receipt.Key, cancel) is { } earlier)
            return earlier;
        if (Wrong(receipt) is { } refusal)
            return refusal;
        if (await db.BlankParts.Include(part => part.Supplier).SingleOrDefaultAsync(part => part.PartNumber == receipt.PartNumber, cancel) is not { } part)
            return new Refusal("unknownPart", $"There is no blank {receipt.PartNumber} in the catalog.");
        var supplier = receipt.SupplierCode is null ? part.Supplier : await db.Vendors.SingleOrDefaultAsync(vendor => vendor.Code == receipt.SupplierCode, cancel);
        if (supplier is null)
            return new Refusal("unknownSupplier", $"There is no vendor {receipt.SupplierCode}.");
        var lot = BlankLot.Receive(part, await db.NextLotNumberAsync(cancel), receipt.Location.Trim(), receipt.Quantity, by, clock.GetUtcNow(), Facts(receipt, supplier));
        db.Add(lot);
        return lot;
    }

    private static Refusal? Wrong(Receipt receipt) => receipt switch
    {
        { Quantity: < 1 or > 100_000 } => new Refusal("badQuantity", "Count at least one blank, and no more than 100,000."),
        { Location: var place } when string.IsNullOrWhiteSpace(place) => new Refusal("noLocation", "Say where the lot lies."),
        _ => BlankLot.TooLong(receipt.Location, receipt.HeatNumber, receipt.Certificate),
    };

    private static LotFacts Facts(Receipt receipt, Vendor supplier) => new()
    {
        Supplier = supplier,
        HeatNumber = receipt.HeatNumber?.Trim(),
        Certificate = receipt.Certificate?.Trim(),
        PurchaseLine = receipt.PurchaseLine,
        ReceiptKey = receipt.Key,
    };
}
