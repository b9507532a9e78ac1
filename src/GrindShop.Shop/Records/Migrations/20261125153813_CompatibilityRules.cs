using System;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class CompatibilityRules : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "ix_gear_rules_cam_gear_distributor_gear",
                table: "gear_rules");

            migrationBuilder.AddColumn<uint>(
                name: "xmin",
                table: "lifter_rules",
                type: "xid",
                rowVersion: true,
                nullable: false,
                defaultValue: 0u);

            migrationBuilder.AddColumn<string>(
                name: "position",
                table: "gear_rules",
                type: "character varying(40)",
                maxLength: 40,
                nullable: false,
                defaultValue: "Rear");

            migrationBuilder.AddColumn<uint>(
                name: "xmin",
                table: "gear_rules",
                type: "xid",
                rowVersion: true,
                nullable: false,
                defaultValue: 0u);

            migrationBuilder.AddColumn<bool>(
                name: "fuel_pump_lobe",
                table: "blank_parts",
                type: "boolean",
                nullable: false,
                defaultValue: false);

            migrationBuilder.CreateTable(
                name: "pump_rules",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    alloy = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    verdict = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    reason = table.Column<string>(type: "text", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_pump_rules", x => x.id);
                    table.CheckConstraint("ck_pump_rules_reason", "length(reason) > 0");
                });

            migrationBuilder.CreateTable(
                name: "rule_changes",
                columns: table => new
                {
                    id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    key = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    subject = table.Column<string>(type: "text", nullable: false),
                    before = table.Column<string>(type: "text", nullable: false),
                    after = table.Column<string>(type: "text", nullable: false),
                    why = table.Column<string>(type: "text", nullable: false),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_rule_changes", x => x.id);
                    table.CheckConstraint("ck_rule_changes_why", "length(why) > 0 AND before <> after");
                });

            migrationBuilder.CreateTable(
                name: "trade_rules",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    kind = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    verdict = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    reason = table.Column<string>(type: "text", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_trade_rules", x => x.id);
                    table.CheckConstraint("ck_trade_rules_reason", "length(reason) > 0");
                });

            migrationBuilder.AddCheckConstraint(
                name: "ck_lifter_rules_reason",
                table: "lifter_rules",
                sql: "length(reason) > 0");

            migrationBuilder.CreateIndex(
                name: "ix_gear_rules_position_cam_gear_distributor_gear",
                table: "gear_rules",
                columns: new[] { "position", "cam_gear", "distributor_gear" },
                unique: true);

            migrationBuilder.AddCheckConstraint(
                name: "ck_gear_rules_position",
                table: "gear_rules",
                sql: "position IN ('Front', 'Rear')");

            migrationBuilder.AddCheckConstraint(
                name: "ck_gear_rules_reason",
                table: "gear_rules",
                sql: "length(reason) > 0");

            migrationBuilder.CreateIndex(
                name: "ix_pump_rules_alloy",
                table: "pump_rules",
                column: "alloy",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_rule_changes_key",
                table: "rule_changes",
                column: "key");

            migrationBuilder.CreateIndex(
                name: "ix_trade_rules_kind",
                table: "trade_rules",
                column: "kind",
                unique: true);

            GearRule.SpreadToBothEnds(migrationBuilder);
            BlankSets.TakePumpLobesFromFamilies(migrationBuilder);
            AppendOnly.Protect(migrationBuilder, "rule_changes");
            CatalogVersion.Watch(migrationBuilder, "pump_rules", "trade_rules");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            GearRule.KeepRearOnly(migrationBuilder);

            migrationBuilder.DropTable(
                name: "pump_rules");

            migrationBuilder.DropTable(
                name: "rule_changes");

            migrationBuilder.DropTable(
                name: "trade_rules");

            migrationBuilder.DropCheckConstraint(
                name: "ck_lifter_rules_reason",
                table: "lifter_rules");

            migrationBuilder.DropIndex(
                name: "ix_gear_rules_position_cam_gear_distributor_gear",
                table: "gear_rules");

            migrationBuilder.DropCheckConstraint(
                name: "ck_gear_rules_position",
                table: "gear_rules");

            migrationBuilder.DropCheckConstraint(
                name: "ck_gear_rules_reason",
                table: "gear_rules");

            migrationBuilder.DropColumn(
                name: "xmin",
                table: "lifter_rules");

            migrationBuilder.DropColumn(
                name: "position",
                table: "gear_rules");

            migrationBuilder.DropColumn(
                name: "xmin",
                table: "gear_rules");

            migrationBuilder.DropColumn(
                name: "fuel_pump_lobe",
                table: "blank_parts");

            migrationBuilder.CreateIndex(
                name: "ix_gear_rules_cam_gear_distributor_gear",
                table: "gear_rules",
                columns: new[] { "cam_gear", "distributor_gear" },
                unique: true);
        }
    }
}
