using Microsoft.EntityFrameworkCore.Migrations;

namespace GrindShop.Shop.Records;

/// <summary>Histories are only ever added to; the database itself refuses to change or delete a line.</summary>
internal static class AppendOnly
{
    public static void Protect(MigrationBuilder migration, params string[] tables)
    {
        migration.Sql("""
            CREATE OR REPLACE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
            BEGIN
                RAISE EXCEPTION 'History lines of % are never changed or deleted.', TG_TABLE_NAME USING ERRCODE = 'restrict_violation';
            END $$;
            """);
        foreach (var table in tables)
        {
            migration.Sql($"CREATE TRIGGER {table}_append_only BEFORE UPDATE OR DELETE ON {table} FOR EACH ROW EXECUTE FUNCTION refuse_change();");
            migration.Sql($"CREATE TRIGGER {table}_never_emptied BEFORE TRUNCATE ON {table} FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();");
        }
    }
}
