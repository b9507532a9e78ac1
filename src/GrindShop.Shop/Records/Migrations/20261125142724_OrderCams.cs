using System;
using GrindShop.Shop.Orders;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class OrderCams : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "ix_jobs_order_id",
                table: "jobs");

            migrationBuilder.AddColumn<int>(
                name: "jobs_opened",
                table: "orders",
                type: "integer",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<DateTimeOffset>(
                name: "state_since",
                table: "orders",
                type: "timestamp with time zone",
                nullable: false,
                defaultValue: new DateTimeOffset(new DateTime(1, 1, 1, 0, 0, 0, 0, DateTimeKind.Unspecified), new TimeSpan(0, 0, 0, 0, 0)));

            migrationBuilder.AddColumn<int>(
                name: "order_cam_id",
                table: "jobs",
                type: "integer",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.CreateTable(
                name: "order_cams",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    order_id = table.Column<int>(type: "integer", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    kind = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    quantity = table.Column<int>(type: "integer", nullable: false),
                    spec = table.Column<string>(type: "jsonb", nullable: false),
                    answer = table.Column<string>(type: "jsonb", nullable: true),
                    verdict = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: true),
                    quoted_part_number = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: true),
                    received_condition = table.Column<string>(type: "text", nullable: true),
                    started = table.Column<int>(type: "integer", nullable: false),
                    shipped = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_order_cams", x => x.id);
                    table.UniqueConstraint("ak_order_cams_order_id_id", x => new { x.order_id, x.id });
                    table.CheckConstraint("ck_order_cams_pieces", "quantity BETWEEN 1 AND 99 AND started BETWEEN 0 AND quantity AND shipped BETWEEN 0 AND started");
                    table.ForeignKey(
                        name: "fk_order_cams_order_order_id",
                        column: x => x.order_id,
                        principalTable: "orders",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_jobs_order_id_order_cam_id",
                table: "jobs",
                columns: new[] { "order_id", "order_cam_id" });

            migrationBuilder.CreateIndex(
                name: "ix_order_cams_order_id_ordinal",
                table: "order_cams",
                columns: new[] { "order_id", "ordinal" },
                unique: true);

            CamCarryOver.FromOrders(migrationBuilder);

            migrationBuilder.DropColumn(
                name: "answer",
                table: "orders");

            migrationBuilder.DropColumn(
                name: "quoted_part_number",
                table: "orders");

            migrationBuilder.DropColumn(
                name: "spec",
                table: "orders");

            migrationBuilder.DropColumn(
                name: "verdict",
                table: "orders");

            migrationBuilder.AddForeignKey(
                name: "fk_jobs_order_cams_order_id_order_cam_id",
                table: "jobs",
                columns: new[] { "order_id", "order_cam_id" },
                principalTable: "order_cams",
                principalColumns: new[] { "order_id", "id" },
                onDelete: ReferentialAction.Restrict);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "fk_jobs_order_cams_order_id_order_cam_id",
                table: "jobs");

            migrationBuilder.DropIndex(
                name: "ix_jobs_order_id_order_cam_id",
                table: "jobs");

            migrationBuilder.DropColumn(
                name: "jobs_opened",
                table: "orders");

            migrationBuilder.DropColumn(
                name: "state_since",
                table: "orders");

            migrationBuilder.DropColumn(
                name: "order_cam_id",
                table: "jobs");

            migrationBuilder.AddColumn<string>(
                name: "answer",
                table: "orders",
                type: "jsonb",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "quoted_part_number",
                table: "orders",
                type: "text",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "spec",
                table: "orders",
                type: "jsonb",
                nullable: false,
                defaultValue: "{}");

            migrationBuilder.AddColumn<string>(
                name: "verdict",
                table: "orders",
                type: "character varying(40)",
                maxLength: 40,
                nullable: true);

            CamCarryOver.ToOrders(migrationBuilder);

            migrationBuilder.DropTable(
                name: "order_cams");

            migrationBuilder.CreateIndex(
                name: "ix_jobs_order_id",
                table: "jobs",
                column: "order_id");
        }
    }
}
