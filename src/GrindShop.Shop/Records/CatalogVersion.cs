using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Microsoft.EntityFrameworkCore.Migrations;

namespace GrindShop.Shop.Records;

/// <summary>
/// Counts the changes of engines, blanks, rules and settings. One row, raised by the database itself in the very transaction that
/// changes a watched table, so that nobody who writes there has anything to remember.
/// </summary>
public sealed class CatalogVersion
{
    public int Id { get; private set; } = 1;

    public long Number { get; private set; } = 1;

    /// <summary>From now on a change of these tables raises the number and tells every web node (<see cref="ChangeNotice.Catalog"/>).</summary>
    internal static void Watch(MigrationBuilder migration, params string[] tables)
    {
        migration.Sql($"""
            CREATE OR REPLACE FUNCTION raise_catalog_version() RETURNS trigger LANGUAGE plpgsql AS $$
            BEGIN
                UPDATE catalog_version SET number = number + 1;
                PERFORM pg_notify('{ChangeNotice.Channel}', '{ChangeNotice.Catalog}');
                RETURN NULL;
            END $$;
            """);
        foreach (var table in tables)
            migration.Sql($"CREATE TRIGGER {table}_in_catalog AFTER INSERT OR UPDATE OR DELETE OR TRUNCATE ON {table} FOR EACH STATEMENT EXECUTE FUNCTION raise_catalog_version();");
    }

    /// <summary>Takes the watching back; a table that is dropped needs none of it.</summary>
    internal static void Unwatch(MigrationBuilder migration, params string[] tables)
    {
        foreach (var table in tables)
            migration.Sql($"DROP TRIGGER {table}_in_catalog ON {table};");
    }
}

internal sealed class CatalogVersionTable : IEntityTypeConfiguration<CatalogVersion>
{
    public void Configure(EntityTypeBuilder<CatalogVersion> table)
    {
        table.ToTable("catalog_version", t => t.HasCheckConstraint("ck_catalog_version_one_row", "id = 1"));
        table.Property(version => version.Id).ValueGeneratedNever();
        table.HasData(new CatalogVersion());
    }
}
