using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class JobEnds : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "ended_as",
                table: "jobs",
                type: "character varying(40)",
                maxLength: 40,
                nullable: true);

            migrationBuilder.AddColumn<DateTimeOffset>(
                name: "ended_at",
                table: "jobs",
                type: "timestamp with time zone",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "replaces",
                table: "jobs",
                type: "character varying(20)",
                maxLength: 20,
                nullable: true);

            migrationBuilder.AddCheckConstraint(
                name: "ck_jobs_ended",
                table: "jobs",
                sql: "(ended_at IS NULL) = (ended_as IS NULL) AND (ended_at IS NULL OR shipped_at IS NULL)");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropCheckConstraint(
                name: "ck_jobs_ended",
                table: "jobs");

            migrationBuilder.DropColumn(
                name: "ended_as",
                table: "jobs");

            migrationBuilder.DropColumn(
                name: "ended_at",
                table: "jobs");

            migrationBuilder.DropColumn(
                name: "replaces",
                table: "jobs");
        }
    }
}
