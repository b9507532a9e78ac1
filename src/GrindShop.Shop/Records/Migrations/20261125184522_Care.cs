using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class Care : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "assigned_to",
                table: "orders",
                type: "character varying(100)",
                maxLength: 100,
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "snooze_reason",
                table: "orders",
                type: "character varying(200)",
                maxLength: 200,
                nullable: true);

            migrationBuilder.AddColumn<DateTimeOffset>(
                name: "snoozed_until",
                table: "orders",
                type: "timestamp with time zone",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "order_calls",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    order_id = table.Column<int>(type: "integer", nullable: false),
                    due_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    number = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    about = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    command_key = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    tries = table.Column<int>(type: "integer", nullable: false),
                    last_tried_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    done_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    done_by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_order_calls", x => x.id);
                    table.CheckConstraint("ck_order_calls_done", "(done_at IS NULL) = (done_by IS NULL) AND (tries = 0) = (last_tried_at IS NULL)");
                    table.ForeignKey(
                        name: "fk_order_calls_order_order_id",
                        column: x => x.order_id,
                        principalTable: "orders",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.AddCheckConstraint(
                name: "ck_orders_snooze",
                table: "orders",
                sql: "(snoozed_until IS NULL) = (snooze_reason IS NULL)");

            migrationBuilder.CreateIndex(
                name: "ix_order_calls_due_at",
                table: "order_calls",
                column: "due_at",
                filter: "done_at IS NULL");

            migrationBuilder.CreateIndex(
                name: "ix_order_calls_order_id_command_key",
                table: "order_calls",
                columns: new[] { "order_id", "command_key" },
                unique: true);

            Orders.Finding.KnownWords.FollowLater(migrationBuilder);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            Orders.Finding.KnownWords.UnfollowLater(migrationBuilder);

            migrationBuilder.DropTable(
                name: "order_calls");

            migrationBuilder.DropCheckConstraint(
                name: "ck_orders_snooze",
                table: "orders");

            migrationBuilder.DropColumn(
                name: "assigned_to",
                table: "orders");

            migrationBuilder.DropColumn(
                name: "snooze_reason",
                table: "orders");

            migrationBuilder.DropColumn(
                name: "snoozed_until",
                table: "orders");
        }
    }
}
