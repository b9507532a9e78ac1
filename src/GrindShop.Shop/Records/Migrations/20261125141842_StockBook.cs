using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class StockBook : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "ix_stock_movements_blank_lot_id",
                table: "stock_movements");

            migrationBuilder.CreateSequence(
                name: "lot_numbers",
                startValue: 1001L);

            migrationBuilder.AddColumn<string>(
                name: "command_key",
                table: "stock_movements",
                type: "character varying(100)",
                maxLength: 100,
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "job_code",
                table: "stock_movements",
                type: "character varying(20)",
                maxLength: 20,
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "certificate",
                table: "blank_lots",
                type: "character varying(100)",
                maxLength: 100,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "heat_number",
                table: "blank_lots",
                type: "character varying(60)",
                maxLength: 60,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "purchase_line",
                table: "blank_lots",
                type: "character varying(100)",
                maxLength: 100,
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "quarantine_reason",
                table: "blank_lots",
                type: "character varying(500)",
                maxLength: 500,
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "receipt_key",
                table: "blank_lots",
                type: "character varying(200)",
                maxLength: 200,
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "supplier_id",
                table: "blank_lots",
                type: "integer",
                nullable: true);

            migrationBuilder.CreateIndex(
                name: "ix_stock_movements_blank_lot_id_command_key",
                table: "stock_movements",
                columns: new[] { "blank_lot_id", "command_key" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_stock_movements_job_code",
                table: "stock_movements",
                column: "job_code");

            StockBalance.NameJobs(migrationBuilder);

            migrationBuilder.AddCheckConstraint(
                name: "ck_stock_movements_job",
                table: "stock_movements",
                sql: "(kind IN ('Allocate', 'Release', 'Consume')) = (job_code IS NOT NULL) AND (allocated_change = 0 OR job_code IS NOT NULL)");

            migrationBuilder.CreateIndex(
                name: "ix_blank_lots_receipt_key",
                table: "blank_lots",
                column: "receipt_key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_blank_lots_supplier_id",
                table: "blank_lots",
                column: "supplier_id");

            migrationBuilder.AddForeignKey(
                name: "fk_blank_lots_vendor_supplier_id",
                table: "blank_lots",
                column: "supplier_id",
                principalTable: "vendors",
                principalColumn: "id",
                onDelete: ReferentialAction.Restrict);

            StockBalance.Protect(migrationBuilder);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            StockBalance.Unprotect(migrationBuilder);

            migrationBuilder.DropForeignKey(
                name: "fk_blank_lots_vendor_supplier_id",
                table: "blank_lots");

            migrationBuilder.DropIndex(
                name: "ix_stock_movements_blank_lot_id_command_key",
                table: "stock_movements");

            migrationBuilder.DropIndex(
                name: "ix_stock_movements_job_code",
                table: "stock_movements");

            migrationBuilder.DropCheckConstraint(
                name: "ck_stock_movements_job",
                table: "stock_movements");

            migrationBuilder.DropIndex(
                name: "ix_blank_lots_receipt_key",
                table: "blank_lots");

            migrationBuilder.DropIndex(
                name: "ix_blank_lots_supplier_id",
                table: "blank_lots");

            migrationBuilder.DropColumn(
                name: "command_key",
                table: "stock_movements");

            migrationBuilder.DropColumn(
                name: "job_code",
                table: "stock_movements");

            migrationBuilder.DropColumn(
                name: "certificate",
                table: "blank_lots");

            migrationBuilder.DropColumn(
                name: "heat_number",
                table: "blank_lots");

            migrationBuilder.DropColumn(
                name: "purchase_line",
                table: "blank_lots");

            migrationBuilder.DropColumn(
                name: "quarantine_reason",
                table: "blank_lots");

            migrationBuilder.DropColumn(
                name: "receipt_key",
                table: "blank_lots");

            migrationBuilder.DropColumn(
                name: "supplier_id",
                table: "blank_lots");

            migrationBuilder.DropSequence(
                name: "lot_numbers");

            migrationBuilder.CreateIndex(
                name: "ix_stock_movements_blank_lot_id",
                table: "stock_movements",
                column: "blank_lot_id");
        }
    }
}
