using GrindShop.Shop.Blanks;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class BlankSources : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropCheckConstraint(
                name: "ck_supply_terms_sold",
                table: "supply_terms");

            migrationBuilder.DropCheckConstraint(
                name: "ck_blank_parts_cost",
                table: "blank_parts");

            migrationBuilder.AddColumn<int>(
                name: "least_quantity",
                table: "blank_parts",
                type: "integer",
                nullable: false,
                defaultValue: 1);

            migrationBuilder.AddColumn<int>(
                name: "supplier_id",
                table: "supply_terms",
                type: "integer",
                nullable: false,
                defaultValue: 0);

            BlankSourceSets.TakeFromTerms(migrationBuilder);

            migrationBuilder.DropColumn(
                name: "least_quantity",
                table: "supply_terms");

            migrationBuilder.CreateTable(
                name: "blank_sources",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    blank_part_id = table.Column<int>(type: "integer", nullable: false),
                    supplier_id = table.Column<int>(type: "integer", nullable: false),
                    supplier_part = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: false),
                    cost = table.Column<decimal>(type: "numeric(10,2)", precision: 10, scale: 2, nullable: false),
                    lead_time_days = table.Column<int>(type: "integer", nullable: false),
                    least_quantity = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_blank_sources", x => x.id);
                    table.CheckConstraint("ck_blank_sources_terms", "cost >= 0 AND lead_time_days >= 0 AND least_quantity >= 1");
                    table.ForeignKey(
                        name: "fk_blank_sources_blank_parts_blank_part_id",
                        column: x => x.blank_part_id,
                        principalTable: "blank_parts",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_blank_sources_vendor_supplier_id",
                        column: x => x.supplier_id,
                        principalTable: "vendors",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_supply_terms_supplier_id",
                table: "supply_terms",
                column: "supplier_id");

            migrationBuilder.AddCheckConstraint(
                name: "ck_supply_terms_sold",
                table: "supply_terms",
                sql: "multiple >= 1 AND setup_charge >= 0");

            migrationBuilder.AddCheckConstraint(
                name: "ck_blank_parts_cost",
                table: "blank_parts",
                sql: "cost >= 0 AND lead_time_days >= 0 AND least_quantity >= 1");

            migrationBuilder.CreateIndex(
                name: "ix_blank_sources_blank_part_id_supplier_id",
                table: "blank_sources",
                columns: new[] { "blank_part_id", "supplier_id" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_blank_sources_supplier_id",
                table: "blank_sources",
                column: "supplier_id");

            migrationBuilder.AddForeignKey(
                name: "fk_supply_terms_vendors_supplier_id",
                table: "supply_terms",
                column: "supplier_id",
                principalTable: "vendors",
                principalColumn: "id",
                onDelete: ReferentialAction.Restrict);

            CatalogVersion.Watch(migrationBuilder, "blank_sources");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "fk_supply_terms_vendors_supplier_id",
                table: "supply_terms");

            migrationBuilder.DropTable(
                name: "blank_sources");

            migrationBuilder.DropIndex(
                name: "ix_supply_terms_supplier_id",
                table: "supply_terms");

            migrationBuilder.DropCheckConstraint(
                name: "ck_supply_terms_sold",
                table: "supply_terms");

            migrationBuilder.DropCheckConstraint(
                name: "ck_blank_parts_cost",
                table: "blank_parts");

            migrationBuilder.AddColumn<int>(
                name: "least_quantity",
                table: "supply_terms",
                type: "integer",
                nullable: false,
                defaultValue: 1);

            BlankSourceSets.GiveBackToTerms(migrationBuilder);

            migrationBuilder.DropColumn(
                name: "supplier_id",
                table: "supply_terms");

            migrationBuilder.DropColumn(
                name: "least_quantity",
                table: "blank_parts");

            migrationBuilder.AddCheckConstraint(
                name: "ck_supply_terms_sold",
                table: "supply_terms",
                sql: "least_quantity >= 1 AND multiple >= 1 AND setup_charge >= 0");

            migrationBuilder.AddCheckConstraint(
                name: "ck_blank_parts_cost",
                table: "blank_parts",
                sql: "cost >= 0 AND lead_time_days >= 0");
        }
    }
}
