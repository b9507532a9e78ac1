using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class OutgoingMails : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "ix_orders_number",
                table: "orders");

            migrationBuilder.AddUniqueConstraint(
                name: "ak_orders_number",
                table: "orders",
                column: "number");

            migrationBuilder.CreateTable(
                name: "outgoing_mails",
                columns: table => new
                {
                    id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    event_key = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    order_number = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    to = table.Column<string>(type: "character varying(320)", maxLength: 320, nullable: false),
                    subject = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    text = table.Column<string>(type: "character varying(100000)", maxLength: 100000, nullable: false),
                    papers = table.Column<string[]>(type: "text[]", nullable: false),
                    message_id = table.Column<string>(type: "character varying(320)", maxLength: 320, nullable: false),
                    in_reply_to = table.Column<string>(type: "text", nullable: true),
                    state = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    written_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    attempts = table.Column<int>(type: "integer", nullable: false),
                    next_attempt_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    lease_until = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    last_error = table.Column<string>(type: "character varying(500)", maxLength: 500, nullable: true),
                    sent_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    via = table.Column<string>(type: "text", nullable: true),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_outgoing_mails", x => x.id);
                    table.CheckConstraint("ck_outgoing_mails_lease", "(state = 'Sending') = (lease_until IS NOT NULL)");
                    table.CheckConstraint("ck_outgoing_mails_one_line", "\"subject\" !~ '[\\r\\n]' AND \"to\" !~ '[\\r\\n]'");
                    table.CheckConstraint("ck_outgoing_mails_sent", "(state IN ('Sent', 'Filed')) = (sent_at IS NOT NULL) AND (sent_at IS NULL) = (via IS NULL)");
                    table.ForeignKey(
                        name: "fk_outgoing_mails_orders_order_number",
                        column: x => x.order_number,
                        principalTable: "orders",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_outgoing_mails_event_key",
                table: "outgoing_mails",
                column: "event_key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_outgoing_mails_message_id",
                table: "outgoing_mails",
                column: "message_id",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_outgoing_mails_next_attempt_at",
                table: "outgoing_mails",
                column: "next_attempt_at",
                filter: "state = 'Waiting'");

            migrationBuilder.CreateIndex(
                name: "ix_outgoing_mails_order_number",
                table: "outgoing_mails",
                column: "order_number");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "outgoing_mails");

            migrationBuilder.DropUniqueConstraint(
                name: "ak_orders_number",
                table: "orders");

            migrationBuilder.CreateIndex(
                name: "ix_orders_number",
                table: "orders",
                column: "number",
                unique: true);
        }
    }
}
