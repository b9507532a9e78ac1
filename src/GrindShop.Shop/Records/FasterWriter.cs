using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace GrindShop.Shop.Records;

/// <summary>Two people write the same at once: the database lets the first through, the second is told.</summary>
public static class FasterWriter
{
    /// <summary>The row was changed since it was read, or somebody has just added the one that was to be added. Any other failure is a bug.</summary>
    public static bool IsFasterWriter(this DbUpdateException error) =>
        error is DbUpdateConcurrencyException || error.InnerException is PostgresException { SqlState: PostgresErrorCodes.UniqueViolation };

    extension(ShopDb db)
    {
        /// <summary>Saves; false where somebody else was faster, and then nothing is saved.</summary>
        public async Task<bool> TrySaveAsync(CancellationToken cancel)
        {
            try
            {
                await db.SaveChangesAsync(cancel);
                return true;
            }
            catch (DbUpdateException error) when (error.IsFasterWriter())
            {
                return false;
            }
        }
    }
}
