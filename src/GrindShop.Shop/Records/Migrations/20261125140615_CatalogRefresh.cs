using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class CatalogRefresh : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "catalog_version",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false),
                    number = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_catalog_version", x => x.id);
                    table.CheckConstraint("ck_catalog_version_one_row", "id = 1");
                });

            migrationBuilder.InsertData(
                table: "catalog_version",
                columns: new[] { "id", "number" },
                values: new object[] { 1, 1L });

            CatalogVersion.Watch(migrationBuilder, "engine_families", "vendors", "blank_parts", "settings", "gear_rules", "lifter_rules", "base_prices", "price_adders");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            CatalogVersion.Unwatch(migrationBuilder, "engine_families", "vendors", "blank_parts", "settings", "gear_rules", "lifter_rules", "base_prices", "price_adders");

            migrationBuilder.DropTable(
                name: "catalog_version");
        }
    }
}
