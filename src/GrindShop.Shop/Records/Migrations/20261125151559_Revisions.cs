using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class Revisions : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<int>(
                name: "revisions_made",
                table: "orders",
                type: "integer",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.CreateTable(
                name: "order_revisions",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    order_id = table.Column<int>(type: "integer", nullable: false),
                    number = table.Column<int>(type: "integer", nullable: false),
                    cam = table.Column<int>(type: "integer", nullable: false),
                    changes = table.Column<string>(type: "jsonb", nullable: false),
                    blank_effect = table.Column<string>(type: "text", nullable: false),
                    price_change = table.Column<decimal>(type: "numeric(10,2)", precision: 10, scale: 2, nullable: false),
                    price_reason = table.Column<string>(type: "text", nullable: false),
                    agreed_by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    agreed_how = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    why = table.Column<string>(type: "text", nullable: false),
                    now = table.Column<string>(type: "jsonb", nullable: false),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_order_revisions", x => x.id);
                    table.ForeignKey(
                        name: "fk_order_revisions_order_order_id",
                        column: x => x.order_id,
                        principalTable: "orders",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_order_revisions_order_id_number",
                table: "order_revisions",
                columns: new[] { "order_id", "number" },
                unique: true);

            AppendOnly.Protect(migrationBuilder, "order_revisions");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "order_revisions");

            migrationBuilder.DropColumn(
                name: "revisions_made",
                table: "orders");
        }
    }
}
