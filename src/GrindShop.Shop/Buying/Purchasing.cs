using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Buying;

/// <summary>What the owner does with a purchase order. Each act names the version it was decided on; a stale one is refused and nothing changes.</summary>
public sealed class Purchasing(IDbContextFactory<ShopDb> factory, Catalog catalog, Receiving receiving, MailSettings mail, TimeProvider clock)
{
    /// <summary>Drafts and open orders, the latest first; with <paramref name="closed"/> the finished ones, newest first.</summary>
    public async Task<IReadOnlyList<PurchaseOrder>> ListAsync(bool closed, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var orders = await db.WholePurchases().AsNoTrackingWithIdentityResolution()
            .Where(order => (order.State == PurchaseState.Received || order.State == PurchaseState.Cancelled) == closed)
            .OrderByDescending(order => order.Id).ToListAsync(cancel);
        return closed ? orders : [.. orders.OrderBy(order => order.NextExpectedOn ?? DateOnly.MaxValue).ThenBy(order => order.Id)];
    }

    /// <summary>Everything about one order, or null where there is none of this number.</summary>
    public async Task<PurchaseOrder?> FindAsync(string number, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.WholePurchases().AsNoTrackingWithIdentityResolution().SingleOrDefaultAsync(order => order.Number == number, cancel);
    }

    /// <summary>
    /// A draft for one supplier, with the parts wished for. The same key a second time answers with the same draft; where one of the wishes is
    /// refused there is no draft.
    /// </summary>
    public async Task<Outcome<PurchaseOrder>> DraftAsync(string vendorCode, IReadOnlyDictionary<string, PurchaseWish> wishes, string key, string why, string by, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock(hashtextextended({key}, 1))", cancel);
        if (await db.WholePurchases().SingleOrDefaultAsync(order => order.CommandKey == key, cancel) is { } earlier)
            return earlier;
        if (await db.Vendors.SingleOrDefaultAsync(vendor => vendor.Code == vendorCode, cancel) is not { } vendor)
            return new Refusal("unknownSupplier", $"There is no vendor {vendorCode}.");
        var order = PurchaseOrder.Draft(await db.NextPurchaseNumberAsync(cancel), vendor, key, by, clock.GetUtcNow(), why);
        foreach (var (partNumber, wish) in wishes)
            if (await WantAsync(db, order, partNumber, wish, by, cancel) is { Succeeded: false } refused)
                return refused;
        db.Add(order);
        await db.SaveAndTellAsync(order.Number, cancel);
        await transaction.CommitAsync(cancel);
        return order;
    }

    public Task<Outcome<PurchaseOrder>> WantAsync(string number, uint version, string partNumber, PurchaseWish wish, string by, CancellationToken cancel = default) =>
        ChangeAsync(number, version, (db, order) => WantAsync(db, order, partNumber, wish, by, cancel), cancel);

    public Task<Outcome<PurchaseOrder>> DropAsync(string number, uint version, string partNumber, string by, CancellationToken cancel = default) =>
        ChangeAsync(number, version, (_, order) => Task.FromResult(order.Drop(partNumber, by, clock.GetUtcNow())), cancel);

    public Task<Outcome<PurchaseOrder>> SendAsync(string number, uint version, string by, CancellationToken cancel = default) =>
        ChangeAsync(number, version, async (db, order) =>
        {
            var sent = order.Send(await TodayAsync(cancel), by, clock.GetUtcNow());
            return sent.Succeeded && await RefuseReplacedAsync(db, order.Lines.Select(line => line.BlankPart), cancel) is { } refusal ? refusal : sent;
        }, cancel);

    /// <summary>Mails it to the vendor through the outbox. The version it was decided on makes a repeated click the same mail: the second is refused.</summary>
    /// <param name="to">The address that was seen; where the vendor has another by now, nothing is mailed.</param>
    public Task<Outcome<PurchaseOrder>> MailAsync(string number, uint version, string to, string by, CancellationToken cancel = default) =>
        ChangeAsync(number, version, async (db, order) =>
        {
            if (order.Vendor.Email is { } now && now != to)
                return new Refusal("stale", $"{order.Vendor.Name} is written to at {now} since then, not at {to}. Nothing was mailed; look at the address and mail it again.");
            var mailed = order.Mail(by, clock.GetUtcNow());
            if (mailed.Succeeded)
                db.Add(await WriteAsync(order, cancel));
            return mailed;
        }, cancel);

    /// <summary>What goes to the vendor; nothing is sent.</summary>
    public async Task<Outcome<Letter>> LetterAsync(string number, CancellationToken cancel = default) => await FindAsync(number, cancel) is { } order
        ? VendorLetter.Of(order, (await catalog.ContentAsync(cancel)).Rules.Settings)
        : Unknown(number);

    /// <summary>Writes down the vendor's e-mail address; blank: none.</summary>
    public Task<Outcome<PurchaseOrder>> WriteToAsync(string number, uint version, string? email, string by, CancellationToken cancel = default) =>
        ChangeAsync(number, version, (_, order) => Task.FromResult(order.WriteTo(email, by, clock.GetUtcNow())), cancel);

    private async Task<OutgoingMail> WriteAsync(PurchaseOrder order, CancellationToken cancel)
    {
        var settings = (await catalog.ContentAsync(cancel)).Rules.Settings;
        return OutgoingMail.ToVendor($"{order.Number}/{order.Changes} Mailed", order.Number, order.Vendor.Email!, VendorLetter.Of(order, settings), (mail.Sender ?? settings.Email).Split('@')[^1], clock.GetUtcNow());
    }

    public Task<Outcome<PurchaseOrder>> ExpectAsync(string number, uint version, string partNumber, DateOnly day, string why, string by, CancellationToken cancel = default) =>
        ChangeAsync(number, version, async (_, order) => order.Expect(partNumber, day, why, await TodayAsync(cancel), by, clock.GetUtcNow()), cancel);

    public Task<Outcome<PurchaseOrder>> CloseAsync(string number, uint version, string why, string by, CancellationToken cancel = default) =>
        ChangeAsync(number, version, (_, order) => Task.FromResult(order.Close(why, by, clock.GetUtcNow())), cancel);

    /// <summary>
    /// Books a delivery: the blanks become a lot in stock and are no longer on order, in one transaction. The same key a second time answers as
    /// the first time and changes nothing; two deliveries at once wait for each other.
    /// </summary>
    public async Task<Outcome<PurchaseReceipt>> ReceiveAsync(string number, Delivery delivery, string by, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        await db.Database.ExecuteSqlAsync($"SELECT 1 FROM purchase_orders WHERE number = {number} FOR UPDATE", cancel);
        if (await db.WholePurchases().SingleOrDefaultAsync(order => order.Number == number, cancel) is not { } order)
            return Unknown(number);
        if (order.Receipt(delivery.Key) is { } earlier)
            return earlier;
        if (order.Refuse(delivery) is { } refusal)
            return refusal;
        var lot = await receiving.ReceiveAsync(db, InStock(order, delivery), by, cancel);
        if (!lot.Succeeded)
            return lot.Refusal;
        var receipt = order.Receive(delivery, lot.Value, by, clock.GetUtcNow());
        await db.SaveAndTellAsync(BlankNotice.Of(lot.Value), cancel);
        await db.SaveAndTellAsync(number, cancel);
        await transaction.CommitAsync(cancel);
        return receipt;
    }

    private static Receipt InStock(PurchaseOrder order, Delivery delivery) => new()
    {
        PartNumber = delivery.PartNumber,
        Quantity = delivery.Quantity,
        Location = delivery.Location,
        SupplierCode = order.Vendor.Code,
        HeatNumber = delivery.HeatNumber,
        Certificate = delivery.Certificate,
        PurchaseLine = order.Number,
        Key = $"{order.Number} {delivery.Key}",
    };

    private async Task<Outcome<PurchaseOrder>> WantAsync(ShopDb db, PurchaseOrder order, string partNumber, PurchaseWish wish, string by, CancellationToken cancel)
    {
        if (await db.WholeParts().SingleOrDefaultAsync(part => part.PartNumber == partNumber, cancel) is not { } part)
            return new Refusal("unknownPart", $"There is no blank {partNumber} in the catalog.");
        if (await RefuseReplacedAsync(db, [part], cancel) is { } refusal)
            return refusal;
        var terms = await db.SupplyTerms.SingleOrDefaultAsync(terms => terms.BlankPartId == part.Id, cancel);
        return order.Want(part, terms, wish, await TodayAsync(cancel), by, clock.GetUtcNow());
    }

    /// <summary>A part that a newer one replaces is used up and not bought again.</summary>
    private async Task<Refusal?> RefuseReplacedAsync(ShopDb db, IEnumerable<BlankPart> parts, CancellationToken cancel)
    {
        var succession = (await catalog.ContentAsync(db, cancel)).Succession;
        return parts.FirstOrDefault(succession.IsReplaced) is { } part && succession.SuccessorOf(part) is { } newer
            ? new Refusal("replaced", $"{part.PartNumber} is replaced by {newer.PartNumber} and not bought again: order {newer.PartNumber} instead.")
            : null;
    }

    private async Task<DateOnly> TodayAsync(CancellationToken cancel) => (await catalog.ContentAsync(cancel)).Rules.Settings.Today(clock.GetUtcNow());

    private async Task<Outcome<PurchaseOrder>> ChangeAsync(string number, uint version, Func<ShopDb, PurchaseOrder, Task<Outcome<PurchaseOrder>>> change, CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await db.WholePurchases().SingleOrDefaultAsync(order => order.Number == number, cancel) is not { } order)
            return Unknown(number);
        if (order.Version != version)
            return Stale(order);
        var outcome = await change(db, order);
        if (!outcome.Succeeded)
            return outcome;
        try
        {
            await db.SaveAndTellAsync(number, cancel);
        }
        catch (DbUpdateException faster) when (faster.IsFasterWriter())
        {
            return await FindAsync(number, cancel) is { } current ? Stale(current) : Unknown(number);
        }
        return outcome;
    }

    private static Refusal Unknown(string number) => new("unknown", $"There is no purchase order {number}.");

    private static Refusal Stale(PurchaseOrder order)
    {
        var last = order.History[^1];
        return new Refusal("stale", $"{last.By} changed this order in the meantime: {last.What} What you typed is kept; look at the change and save again.");
    }
}
