using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class WaysIn : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "catalog_grinds",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    code = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    engine_family_id = table.Column<int>(type: "integer", nullable: false),
                    entry = table.Column<string>(type: "jsonb", nullable: false),
                    retired = table.Column<bool>(type: "boolean", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_catalog_grinds", x => x.id);
                    table.ForeignKey(
                        name: "fk_catalog_grinds_engine_families_engine_family_id",
                        column: x => x.engine_family_id,
                        principalTable: "engine_families",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "kept_drafts",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    code = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    submit_key = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    texts = table.Column<string>(type: "jsonb", nullable: false),
                    revision = table.Column<int>(type: "integer", nullable: false),
                    changed_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_kept_drafts", x => x.id);
                    table.CheckConstraint("ck_kept_drafts_size", "length(texts::text) <= 80000");
                });

            migrationBuilder.CreateTable(
                name: "start_rule_sets",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    number = table.Column<int>(type: "integer", nullable: false),
                    rules = table.Column<string>(type: "jsonb", nullable: false),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    why = table.Column<string>(type: "character varying(500)", maxLength: 500, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_start_rule_sets", x => x.id);
                    table.CheckConstraint("ck_start_rule_sets_number", "number >= 1");
                });

            migrationBuilder.CreateTable(
                name: "catalog_grind_events",
                columns: table => new
                {
                    id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    catalog_grind_id = table.Column<int>(type: "integer", nullable: false),
                    kind = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    why = table.Column<string>(type: "character varying(500)", maxLength: 500, nullable: false),
                    entry = table.Column<string>(type: "jsonb", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_catalog_grind_events", x => x.id);
                    table.ForeignKey(
                        name: "fk_catalog_grind_events_catalog_grinds_catalog_grind_id",
                        column: x => x.catalog_grind_id,
                        principalTable: "catalog_grinds",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_catalog_grind_events_catalog_grind_id",
                table: "catalog_grind_events",
                column: "catalog_grind_id");

            migrationBuilder.CreateIndex(
                name: "ix_catalog_grinds_code",
                table: "catalog_grinds",
                column: "code",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_catalog_grinds_engine_family_id",
                table: "catalog_grinds",
                column: "engine_family_id");

            migrationBuilder.CreateIndex(
                name: "ix_kept_drafts_changed_at",
                table: "kept_drafts",
                column: "changed_at");

            migrationBuilder.CreateIndex(
                name: "ix_kept_drafts_code",
                table: "kept_drafts",
                column: "code",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_kept_drafts_submit_key",
                table: "kept_drafts",
                column: "submit_key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_start_rule_sets_number",
                table: "start_rule_sets",
                column: "number",
                unique: true);

            AppendOnly.Protect(migrationBuilder, "start_rule_sets", "catalog_grind_events");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "catalog_grind_events");

            migrationBuilder.DropTable(
                name: "kept_drafts");

            migrationBuilder.DropTable(
                name: "start_rule_sets");

            migrationBuilder.DropTable(
                name: "catalog_grinds");
        }
    }
}
