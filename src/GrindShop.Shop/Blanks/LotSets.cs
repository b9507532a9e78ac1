using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Blanks;

public static class LotSets
{
    extension(ShopDb db)
    {
        /// <summary>Lots with part, family, supplier and book.</summary>
        public IQueryable<BlankLot> WholeLots() => db.BlankLots
            .Include(lot => lot.BlankPart).ThenInclude(part => part.EngineFamily)
            .Include(lot => lot.Supplier)
            .Include(lot => lot.Samples.OrderBy(sample => sample.Id))
            .Include(lot => lot.Movements.OrderBy(line => line.Id))
            .AsSplitQuery();

        /// <summary>The lot with its book, locked until the transaction ends: whoever comes second waits and then sees what the first has left.</summary>
        public async Task<BlankLot?> LockLotAsync(string lotNumber, CancellationToken cancel)
        {
            await db.Database.ExecuteSqlAsync($"SELECT 1 FROM blank_lots WHERE lot_number = {lotNumber} FOR UPDATE", cancel);
            return await db.WholeLots().SingleOrDefaultAsync(lot => lot.LotNumber == lotNumber, cancel);
        }

        /// <summary>Several lots with their books, locked oldest first as all lots of a part are; call it in <see cref="Turn.Blanks"/>.</summary>
        internal async Task<List<BlankLot>> LockLotsAsync(IReadOnlyCollection<int> ids, CancellationToken cancel)
        {
            await db.Database.ExecuteSqlAsync($"SELECT 1 FROM blank_lots WHERE id = ANY ({ids.ToArray()}) ORDER BY received_at, id FOR UPDATE", cancel);
            return await db.WholeLots().Where(lot => ids.Contains(lot.Id)).ToListAsync(cancel);
        }

        /// <summary>All lots of a part, locked until the transaction ends, the oldest first.</summary>
        internal Task<List<BlankLot>> LockLotsOfAsync(int partId, CancellationToken cancel) =>
            db.BlankLots.FromSql($"SELECT * FROM blank_lots WHERE blank_part_id = {partId} ORDER BY received_at, id FOR UPDATE").ToListAsync(cancel);

        /// <summary>Draws a lot number that no lot has; numbers are never used twice, though a failed receipt may leave a gap.</summary>
        public async Task<string> NextLotNumberAsync(CancellationToken cancel)
        {
            while (true)
            {
                var number = $"L{await db.Database.SqlQueryRaw<long>($"SELECT nextval('{ShopDb.LotSequence}') AS \"Value\"").SingleAsync(cancel)}";
                if (!await db.BlankLots.AnyAsync(lot => lot.LotNumber == number, cancel))
                    return number;
            }
        }
    }
}
