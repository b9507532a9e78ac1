using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class Buying : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateSequence(
                name: "purchase_numbers",
                startValue: 1001L);

            migrationBuilder.CreateTable(
                name: "buying_rules",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false),
                    service_level = table.Column<double>(type: "double precision", nullable: false),
                    order_cost = table.Column<decimal>(type: "numeric(10,2)", precision: 10, scale: 2, nullable: false),
                    cost_of_capital = table.Column<double>(type: "double precision", nullable: false),
                    storage_a_year = table.Column<decimal>(type: "numeric(10,2)", precision: 10, scale: 2, nullable: false),
                    obsolescence_a_year = table.Column<double>(type: "double precision", nullable: false),
                    most_years_of_cover = table.Column<double>(type: "double precision", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_buying_rules", x => x.id);
                    table.CheckConstraint("ck_buying_rules_costs", "order_cost >= 0 AND storage_a_year > 0 AND cost_of_capital BETWEEN 0 AND 1 AND obsolescence_a_year BETWEEN 0 AND 1 AND most_years_of_cover > 0");
                    table.CheckConstraint("ck_buying_rules_one_row", "id = 1");
                    table.CheckConstraint("ck_buying_rules_service", "service_level BETWEEN 0.5 AND 0.999");
                });

            migrationBuilder.CreateTable(
                name: "purchase_orders",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    number = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    vendor_id = table.Column<int>(type: "integer", nullable: false),
                    state = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    drafted_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    sent_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    command_key = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    changes = table.Column<int>(type: "integer", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_purchase_orders", x => x.id);
                    table.CheckConstraint("ck_purchase_orders_sent", "CASE state WHEN 'Draft' THEN sent_at IS NULL WHEN 'Cancelled' THEN true ELSE sent_at IS NOT NULL END");
                    table.ForeignKey(
                        name: "fk_purchase_orders_vendors_vendor_id",
                        column: x => x.vendor_id,
                        principalTable: "vendors",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "supply_terms",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    blank_part_id = table.Column<int>(type: "integer", nullable: false),
                    least_quantity = table.Column<int>(type: "integer", nullable: false),
                    multiple = table.Column<int>(type: "integer", nullable: false),
                    setup_charge = table.Column<decimal>(type: "numeric(10,2)", precision: 10, scale: 2, nullable: false),
                    price_breaks = table.Column<string>(type: "jsonb", nullable: false),
                    service_level = table.Column<double>(type: "double precision", nullable: true),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_supply_terms", x => x.id);
                    table.CheckConstraint("ck_supply_terms_service", "service_level BETWEEN 0.5 AND 0.999");
                    table.CheckConstraint("ck_supply_terms_sold", "least_quantity >= 1 AND multiple >= 1 AND setup_charge >= 0");
                    table.ForeignKey(
                        name: "fk_supply_terms_blank_parts_blank_part_id",
                        column: x => x.blank_part_id,
                        principalTable: "blank_parts",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "purchase_events",
                columns: table => new
                {
                    id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    purchase_order_id = table.Column<int>(type: "integer", nullable: false),
                    kind = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    what = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_purchase_events", x => x.id);
                    table.ForeignKey(
                        name: "fk_purchase_events_purchase_order_purchase_order_id",
                        column: x => x.purchase_order_id,
                        principalTable: "purchase_orders",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "purchase_lines",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    purchase_order_id = table.Column<int>(type: "integer", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    blank_part_id = table.Column<int>(type: "integer", nullable: false),
                    quantity = table.Column<int>(type: "integer", nullable: false),
                    unit_cost = table.Column<decimal>(type: "numeric(10,2)", precision: 10, scale: 2, nullable: false),
                    setup_charge = table.Column<decimal>(type: "numeric(10,2)", precision: 10, scale: 2, nullable: false),
                    first_expected_on = table.Column<DateOnly>(type: "date", nullable: false),
                    expected_on = table.Column<DateOnly>(type: "date", nullable: false),
                    received = table.Column<int>(type: "integer", nullable: false),
                    unusual_why = table.Column<string>(type: "character varying(500)", maxLength: 500, nullable: true),
                    more_why = table.Column<string>(type: "character varying(500)", maxLength: 500, nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_purchase_lines", x => x.id);
                    table.CheckConstraint("ck_purchase_lines_cost", "unit_cost >= 0 AND setup_charge >= 0");
                    table.CheckConstraint("ck_purchase_lines_quantity", "quantity >= 1 AND received >= 0 AND (received <= quantity OR more_why IS NOT NULL)");
                    table.ForeignKey(
                        name: "fk_purchase_lines_blank_parts_blank_part_id",
                        column: x => x.blank_part_id,
                        principalTable: "blank_parts",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_purchase_lines_purchase_order_purchase_order_id",
                        column: x => x.purchase_order_id,
                        principalTable: "purchase_orders",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "purchase_receipts",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    purchase_line_id = table.Column<int>(type: "integer", nullable: false),
                    blank_lot_id = table.Column<int>(type: "integer", nullable: false),
                    quantity = table.Column<int>(type: "integer", nullable: false),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    key = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_purchase_receipts", x => x.id);
                    table.CheckConstraint("ck_purchase_receipts_quantity", "quantity >= 1");
                    table.ForeignKey(
                        name: "fk_purchase_receipts_blank_lots_blank_lot_id",
                        column: x => x.blank_lot_id,
                        principalTable: "blank_lots",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_purchase_receipts_purchase_lines_purchase_line_id",
                        column: x => x.purchase_line_id,
                        principalTable: "purchase_lines",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.InsertData(
                table: "buying_rules",
                columns: new[] { "id", "cost_of_capital", "most_years_of_cover", "obsolescence_a_year", "order_cost", "service_level", "storage_a_year" },
                values: new object[] { 1, 0.12, 2.0, 0.029999999999999999, 35m, 0.94999999999999996, 1.5m });

            migrationBuilder.CreateIndex(
                name: "ix_purchase_events_purchase_order_id",
                table: "purchase_events",
                column: "purchase_order_id");

            migrationBuilder.CreateIndex(
                name: "ix_purchase_lines_blank_part_id",
                table: "purchase_lines",
                column: "blank_part_id");

            migrationBuilder.CreateIndex(
                name: "ix_purchase_lines_purchase_order_id_blank_part_id",
                table: "purchase_lines",
                columns: new[] { "purchase_order_id", "blank_part_id" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_purchase_lines_purchase_order_id_ordinal",
                table: "purchase_lines",
                columns: new[] { "purchase_order_id", "ordinal" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_purchase_orders_command_key",
                table: "purchase_orders",
                column: "command_key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_purchase_orders_number",
                table: "purchase_orders",
                column: "number",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_purchase_orders_state",
                table: "purchase_orders",
                column: "state");

            migrationBuilder.CreateIndex(
                name: "ix_purchase_orders_vendor_id",
                table: "purchase_orders",
                column: "vendor_id");

            migrationBuilder.CreateIndex(
                name: "ix_purchase_receipts_blank_lot_id",
                table: "purchase_receipts",
                column: "blank_lot_id",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_purchase_receipts_key",
                table: "purchase_receipts",
                column: "key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_purchase_receipts_purchase_line_id",
                table: "purchase_receipts",
                column: "purchase_line_id");

            migrationBuilder.CreateIndex(
                name: "ix_supply_terms_blank_part_id",
                table: "supply_terms",
                column: "blank_part_id",
                unique: true);

            AppendOnly.Protect(migrationBuilder, "purchase_events", "purchase_receipts");
            PurchaseBalance.Protect(migrationBuilder);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            PurchaseBalance.Unprotect(migrationBuilder);

            migrationBuilder.DropTable(
                name: "buying_rules");

            migrationBuilder.DropTable(
                name: "purchase_events");

            migrationBuilder.DropTable(
                name: "purchase_receipts");

            migrationBuilder.DropTable(
                name: "supply_terms");

            migrationBuilder.DropTable(
                name: "purchase_lines");

            migrationBuilder.DropTable(
                name: "purchase_orders");

            migrationBuilder.DropSequence(
                name: "purchase_numbers");
        }
    }
}
