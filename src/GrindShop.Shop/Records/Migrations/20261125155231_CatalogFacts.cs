using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class CatalogFacts : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "ix_blank_parts_part_number",
                table: "blank_parts");

            migrationBuilder.AddColumn<string>(
                name: "lot_fit",
                table: "jobs",
                type: "jsonb",
                nullable: true);

            migrationBuilder.AddColumn<string[]>(
                name: "alternates",
                table: "blank_parts",
                type: "text[]",
                nullable: false,
                defaultValue: new string[0]);

            migrationBuilder.AddColumn<string>(
                name: "drive_end",
                table: "blank_parts",
                type: "character varying(200)",
                maxLength: 200,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<double[]>(
                name: "journal_diameters_in",
                table: "blank_parts",
                type: "double precision[]",
                nullable: false,
                defaultValue: new double[0]);

            migrationBuilder.AddColumn<string>(
                name: "supersedes",
                table: "blank_parts",
                type: "character varying(40)",
                maxLength: 40,
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "supplier_part",
                table: "blank_parts",
                type: "character varying(60)",
                maxLength: 60,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<uint>(
                name: "xmin",
                table: "blank_parts",
                type: "xid",
                rowVersion: true,
                nullable: false,
                defaultValue: 0u);

            migrationBuilder.AddColumn<double>(
                name: "measured_case_in",
                table: "blank_lots",
                type: "double precision",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "measured_stock_in",
                table: "blank_lots",
                type: "double precision",
                nullable: true);

            migrationBuilder.AddUniqueConstraint(
                name: "ak_blank_parts_part_number",
                table: "blank_parts",
                column: "part_number");

            migrationBuilder.CreateTable(
                name: "blank_files",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    blank_part_id = table.Column<int>(type: "integer", nullable: false),
                    name = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    media_type = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: false),
                    content = table.Column<byte[]>(type: "bytea", nullable: false),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_blank_files", x => x.id);
                    table.CheckConstraint("ck_blank_files_size", "octet_length(content) BETWEEN 1 AND 5242880");
                    table.ForeignKey(
                        name: "fk_blank_files_blank_part_blank_part_id",
                        column: x => x.blank_part_id,
                        principalTable: "blank_parts",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "blank_part_events",
                columns: table => new
                {
                    id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    blank_part_id = table.Column<int>(type: "integer", nullable: false),
                    what = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    why = table.Column<string>(type: "character varying(500)", maxLength: 500, nullable: false),
                    changes = table.Column<string>(type: "jsonb", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_blank_part_events", x => x.id);
                    table.ForeignKey(
                        name: "fk_blank_part_events_blank_part_blank_part_id",
                        column: x => x.blank_part_id,
                        principalTable: "blank_parts",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "lot_samples",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    blank_lot_id = table.Column<int>(type: "integer", nullable: false),
                    pieces = table.Column<int>(type: "integer", nullable: false),
                    hardness_value = table.Column<double>(type: "double precision", nullable: true),
                    hardness_scale = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: true),
                    case_depth_in = table.Column<double>(type: "double precision", nullable: true),
                    stock_in = table.Column<double>(type: "double precision", nullable: true),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    note = table.Column<string>(type: "character varying(500)", maxLength: 500, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_lot_samples", x => x.id);
                    table.CheckConstraint("ck_lot_samples_figures", "pieces > 0 AND (hardness_value IS NULL) = (hardness_scale IS NULL) AND case_depth_in >= 0 AND stock_in >= 0");
                    table.ForeignKey(
                        name: "fk_lot_samples_blank_lots_blank_lot_id",
                        column: x => x.blank_lot_id,
                        principalTable: "blank_lots",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_blank_parts_supersedes",
                table: "blank_parts",
                column: "supersedes",
                unique: true);

            migrationBuilder.AddCheckConstraint(
                name: "ck_blank_parts_buying",
                table: "blank_parts",
                sql: "supersedes <> part_number");

            migrationBuilder.CreateIndex(
                name: "ix_blank_files_blank_part_id",
                table: "blank_files",
                column: "blank_part_id");

            migrationBuilder.CreateIndex(
                name: "ix_blank_part_events_blank_part_id",
                table: "blank_part_events",
                column: "blank_part_id");

            migrationBuilder.CreateIndex(
                name: "ix_lot_samples_blank_lot_id",
                table: "lot_samples",
                column: "blank_lot_id");

            migrationBuilder.AddForeignKey(
                name: "fk_blank_parts_blank_parts_supersedes",
                table: "blank_parts",
                column: "supersedes",
                principalTable: "blank_parts",
                principalColumn: "part_number",
                onDelete: ReferentialAction.Restrict);

            AppendOnly.Protect(migrationBuilder, "blank_part_events", "lot_samples");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "fk_blank_parts_blank_parts_supersedes",
                table: "blank_parts");

            migrationBuilder.DropTable(
                name: "blank_files");

            migrationBuilder.DropTable(
                name: "blank_part_events");

            migrationBuilder.DropTable(
                name: "lot_samples");

            migrationBuilder.DropUniqueConstraint(
                name: "ak_blank_parts_part_number",
                table: "blank_parts");

            migrationBuilder.DropIndex(
                name: "ix_blank_parts_supersedes",
                table: "blank_parts");

            migrationBuilder.DropCheckConstraint(
                name: "ck_blank_parts_buying",
                table: "blank_parts");

            migrationBuilder.DropColumn(
                name: "lot_fit",
                table: "jobs");

            migrationBuilder.DropColumn(
                name: "alternates",
                table: "blank_parts");

            migrationBuilder.DropColumn(
                name: "drive_end",
                table: "blank_parts");

            migrationBuilder.DropColumn(
                name: "journal_diameters_in",
                table: "blank_parts");

            migrationBuilder.DropColumn(
                name: "supersedes",
                table: "blank_parts");

            migrationBuilder.DropColumn(
                name: "supplier_part",
                table: "blank_parts");

            migrationBuilder.DropColumn(
                name: "xmin",
                table: "blank_parts");

            migrationBuilder.DropColumn(
                name: "measured_case_in",
                table: "blank_lots");

            migrationBuilder.DropColumn(
                name: "measured_stock_in",
                table: "blank_lots");

            migrationBuilder.CreateIndex(
                name: "ix_blank_parts_part_number",
                table: "blank_parts",
                column: "part_number",
                unique: true);
        }
    }
}
