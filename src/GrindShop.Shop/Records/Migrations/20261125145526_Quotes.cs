using System;
using GrindShop.Shop.Orders;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class Quotes : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "accepted_by",
                table: "orders",
                type: "character varying(100)",
                maxLength: 100,
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "current_quote_number",
                table: "orders",
                type: "character varying(20)",
                maxLength: 20,
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "quotes_made",
                table: "orders",
                type: "integer",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.CreateTable(
                name: "deposits",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    order_id = table.Column<int>(type: "integer", nullable: false),
                    amount = table.Column<decimal>(type: "numeric(10,2)", precision: 10, scale: 2, nullable: false),
                    how = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    paid_on = table.Column<DateOnly>(type: "date", nullable: false),
                    note = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    command_key = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_deposits", x => x.id);
                    table.CheckConstraint("ck_deposits_amount", "amount <> 0");
                    table.ForeignKey(
                        name: "fk_deposits_order_order_id",
                        column: x => x.order_id,
                        principalTable: "orders",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "quotes",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    order_id = table.Column<int>(type: "integer", nullable: false),
                    number = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    valid_until = table.Column<DateOnly>(type: "date", nullable: false),
                    ship_on = table.Column<DateOnly>(type: "date", nullable: true),
                    lines = table.Column<string>(type: "jsonb", nullable: false),
                    cams = table.Column<string>(type: "jsonb", nullable: false),
                    total = table.Column<decimal>(type: "numeric(10,2)", precision: 10, scale: 2, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_quotes", x => x.id);
                    table.CheckConstraint("ck_quotes_total", "total > 0");
                    table.ForeignKey(
                        name: "fk_quotes_orders_order_id",
                        column: x => x.order_id,
                        principalTable: "orders",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_deposits_order_id_command_key",
                table: "deposits",
                columns: new[] { "order_id", "command_key" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_quotes_number",
                table: "quotes",
                column: "number",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_quotes_order_id",
                table: "quotes",
                column: "order_id");

            QuoteCarryOver.FromOrders(migrationBuilder);

            AppendOnly.Protect(migrationBuilder, "quotes", "deposits");

            migrationBuilder.DropColumn(
                name: "price_lines",
                table: "orders");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "price_lines",
                table: "orders",
                type: "jsonb",
                nullable: false,
                defaultValue: "[]");

            QuoteCarryOver.ToOrders(migrationBuilder);

            migrationBuilder.DropTable(
                name: "deposits");

            migrationBuilder.DropTable(
                name: "quotes");

            migrationBuilder.DropColumn(
                name: "accepted_by",
                table: "orders");

            migrationBuilder.DropColumn(
                name: "current_quote_number",
                table: "orders");

            migrationBuilder.DropColumn(
                name: "quotes_made",
                table: "orders");
        }
    }
}
