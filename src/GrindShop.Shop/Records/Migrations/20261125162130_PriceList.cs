using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class PriceList : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<uint>(
                name: "xmin",
                table: "settings",
                type: "xid",
                rowVersion: true,
                nullable: false,
                defaultValue: 0u);

            migrationBuilder.AddColumn<string>(
                name: "measure",
                table: "price_adders",
                type: "character varying(40)",
                maxLength: 40,
                nullable: false,
                defaultValue: "Dollars");

            migrationBuilder.AddColumn<uint>(
                name: "xmin",
                table: "price_adders",
                type: "xid",
                rowVersion: true,
                nullable: false,
                defaultValue: 0u);

            migrationBuilder.AddColumn<uint>(
                name: "xmin",
                table: "base_prices",
                type: "xid",
                rowVersion: true,
                nullable: false,
                defaultValue: 0u);

            migrationBuilder.CreateTable(
                name: "quantity_breaks",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    from = table.Column<int>(type: "integer", nullable: false),
                    amount = table.Column<decimal>(type: "numeric(10,2)", precision: 10, scale: 2, nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_quantity_breaks", x => x.id);
                    table.CheckConstraint("ck_quantity_breaks_amount", "amount > 0 AND amount <= 50 AND \"from\" BETWEEN 2 AND 100");
                });

            migrationBuilder.CreateTable(
                name: "repair_prices",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    engine_family_id = table.Column<int>(type: "integer", nullable: false),
                    kind = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    amount = table.Column<decimal>(type: "numeric(10,2)", precision: 10, scale: 2, nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_repair_prices", x => x.id);
                    table.CheckConstraint("ck_repair_prices_amount", "amount > 0 AND kind IN ('Regrind', 'GearReplacement')");
                    table.ForeignKey(
                        name: "fk_repair_prices_engine_families_engine_family_id",
                        column: x => x.engine_family_id,
                        principalTable: "engine_families",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.AddCheckConstraint(
                name: "ck_price_adders_amount",
                table: "price_adders",
                sql: "amount BETWEEN -20000 AND 20000");

            migrationBuilder.CreateIndex(
                name: "ix_quantity_breaks_from",
                table: "quantity_breaks",
                column: "from",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_repair_prices_engine_family_id_kind",
                table: "repair_prices",
                columns: new[] { "engine_family_id", "kind" },
                unique: true);

            CatalogVersion.Watch(migrationBuilder, "repair_prices", "quantity_breaks");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "quantity_breaks");

            migrationBuilder.DropTable(
                name: "repair_prices");

            migrationBuilder.DropCheckConstraint(
                name: "ck_price_adders_amount",
                table: "price_adders");

            migrationBuilder.DropColumn(
                name: "xmin",
                table: "settings");

            migrationBuilder.DropColumn(
                name: "measure",
                table: "price_adders");

            migrationBuilder.DropColumn(
                name: "xmin",
                table: "price_adders");

            migrationBuilder.DropColumn(
                name: "xmin",
                table: "base_prices");
        }
    }
}
