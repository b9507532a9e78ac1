using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class Questions : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "order_questions",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    order_id = table.Column<int>(type: "integer", nullable: false),
                    cam = table.Column<int>(type: "integer", nullable: false),
                    field = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: true),
                    text = table.Column<string>(type: "character varying(600)", maxLength: 600, nullable: false),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    command_key = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_order_questions", x => x.id);
                    table.ForeignKey(
                        name: "fk_order_questions_orders_order_id",
                        column: x => x.order_id,
                        principalTable: "orders",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "order_replies",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    question_id = table.Column<int>(type: "integer", nullable: false),
                    value = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    words = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: true),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    command_key = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_order_replies", x => x.id);
                    table.CheckConstraint("ck_order_replies_said", "value IS NOT NULL OR words IS NOT NULL");
                    table.ForeignKey(
                        name: "fk_order_replies_order_questions_question_id",
                        column: x => x.question_id,
                        principalTable: "order_questions",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_order_questions_order_id",
                table: "order_questions",
                column: "order_id");

            migrationBuilder.CreateIndex(
                name: "ix_order_replies_question_id_command_key",
                table: "order_replies",
                columns: new[] { "question_id", "command_key" },
                unique: true);

            AppendOnly.Protect(migrationBuilder, "order_questions", "order_replies");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "order_replies");

            migrationBuilder.DropTable(
                name: "order_questions");
        }
    }
}
