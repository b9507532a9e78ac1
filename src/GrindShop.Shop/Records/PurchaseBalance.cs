using Microsoft.EntityFrameworkCore.Migrations;

namespace GrindShop.Shop.Records;

/// <summary>What a purchase line says was received is the sum of its deliveries; the database refuses to commit anything else.</summary>
internal static class PurchaseBalance
{
    public static void Protect(MigrationBuilder migration)
    {
        migration.Sql("""
            CREATE FUNCTION purchase_balances() RETURNS trigger LANGUAGE plpgsql AS $$
            DECLARE line integer := CASE TG_TABLE_NAME WHEN 'purchase_lines' THEN NEW.id ELSE (to_jsonb(NEW) ->> 'purchase_line_id')::integer END;
            BEGIN
                IF EXISTS (
                    SELECT 1 FROM purchase_lines l WHERE l.id = line
                        AND l.received <> (SELECT coalesce(sum(r.quantity), 0) FROM purchase_receipts r WHERE r.purchase_line_id = line)) THEN
                    RAISE EXCEPTION 'Purchase line % does not agree with its deliveries.', line USING ERRCODE = 'check_violation';
                END IF;
                RETURN NULL;
            END $$;
            """);
        migration.Sql("CREATE CONSTRAINT TRIGGER purchase_lines_balance AFTER INSERT OR UPDATE ON purchase_lines DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION purchase_balances();");
        migration.Sql("CREATE CONSTRAINT TRIGGER purchase_receipts_balance AFTER INSERT ON purchase_receipts DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION purchase_balances();");
    }

    public static void Unprotect(MigrationBuilder migration) => migration.Sql("DROP FUNCTION purchase_balances() CASCADE;");
}
