using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Records;

public static class ChangeNotice
{
    public const string Channel = "shop_changes";

    /// <summary>Stands where an order's number would, when engines, blanks, rules or settings have changed; see <see cref="CatalogVersion"/>.</summary>
    public const string Catalog = "catalog";

    /// <summary>Saves and, in the same transaction, tells every web node which order has changed.</summary>
    public static async Task SaveAndTellAsync(this ShopDb db, string orderNumber, CancellationToken cancel)
    {
        await using var transaction = db.Database.CurrentTransaction is null ? await db.Database.BeginTransactionAsync(cancel) : null;
        await db.SaveChangesAsync(cancel);
        await db.Database.ExecuteSqlAsync($"SELECT pg_notify({Channel}, {orderNumber})", cancel);
        if (transaction is not null)
            await transaction.CommitAsync(cancel);
    }
}
