using Microsoft.EntityFrameworkCore.Migrations;

namespace GrindShop.Shop.Records;

/// <summary>
/// The database compares each lot with its book when a transaction ends: the counters are the sums of the book's lines, and the lot is held back
/// just when the book says so.
/// </summary>
internal static class StockBalance
{
    public static void Protect(MigrationBuilder migration)
    {
        migration.Sql("""
            CREATE FUNCTION stock_balances() RETURNS trigger LANGUAGE plpgsql AS $$
            DECLARE lot integer := CASE TG_TABLE_NAME WHEN 'blank_lots' THEN NEW.id ELSE (to_jsonb(NEW) ->> 'blank_lot_id')::integer END;
            BEGIN
                IF NOT EXISTS (
                    SELECT 1 FROM blank_lots l WHERE l.id = lot
                        AND (l.on_hand, l.allocated, (l.quarantine_reason IS NOT NULL)::integer) = (
                            SELECT coalesce(sum(m.on_hand_change), 0), coalesce(sum(m.allocated_change), 0),
                                count(*) FILTER (WHERE m.kind = 'Quarantine') - count(*) FILTER (WHERE m.kind = 'Clear')
                            FROM stock_movements m WHERE m.blank_lot_id = lot)) THEN
                    RAISE EXCEPTION 'Lot % does not agree with its stock book.', lot USING ERRCODE = 'check_violation';
                END IF;
                RETURN NULL;
            END $$;
            """);
        migration.Sql("CREATE CONSTRAINT TRIGGER blank_lots_balance AFTER INSERT OR UPDATE ON blank_lots DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION stock_balances();");
        migration.Sql("CREATE CONSTRAINT TRIGGER stock_movements_balance AFTER INSERT ON stock_movements DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION stock_balances();");
    }

    /// <summary>Lines written before jobs had a column of their own name theirs in the reason.</summary>
    public static void NameJobs(MigrationBuilder migration) => migration.Sql("""
        ALTER TABLE stock_movements DISABLE TRIGGER stock_movements_append_only;
        UPDATE stock_movements SET job_code = substring(reason FROM '(?:for|ground as) (.+)') WHERE kind IN ('Allocate', 'Consume');
        ALTER TABLE stock_movements ENABLE TRIGGER stock_movements_append_only;
        """);

    public static void Unprotect(MigrationBuilder migration) => migration.Sql("DROP FUNCTION stock_balances() CASCADE;");
}
