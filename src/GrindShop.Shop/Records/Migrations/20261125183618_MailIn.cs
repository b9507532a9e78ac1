using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class MailIn : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "incoming_mails",
                columns: table => new
                {
                    id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    source = table.Column<string>(type: "character varying(600)", maxLength: 600, nullable: false),
                    message_id = table.Column<string>(type: "character varying(320)", maxLength: 320, nullable: true),
                    digest = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    from = table.Column<string>(type: "character varying(320)", maxLength: 320, nullable: false),
                    from_name = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    subject = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    text = table.Column<string>(type: "character varying(100000)", maxLength: 100000, nullable: false),
                    attachments = table.Column<string>(type: "jsonb", nullable: false),
                    taken_in_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    fate = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    reason = table.Column<string>(type: "character varying(500)", maxLength: 500, nullable: true),
                    order_number = table.Column<string>(type: "character varying(20)", nullable: true),
                    settled_by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: true),
                    original_bytes = table.Column<int>(type: "integer", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_incoming_mails", x => x.id);
                    table.CheckConstraint("ck_incoming_mails_order", "fate NOT IN ('NewOrder', 'Added', 'FromAnother') OR order_number IS NOT NULL");
                    table.CheckConstraint("ck_incoming_mails_reason", "fate <> 'PutAside' OR reason IS NOT NULL");
                    table.ForeignKey(
                        name: "fk_incoming_mails_orders_order_number",
                        column: x => x.order_number,
                        principalTable: "orders",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "mailbox_marks",
                columns: table => new
                {
                    mailbox = table.Column<string>(type: "character varying(500)", maxLength: 500, nullable: false),
                    uid_validity = table.Column<long>(type: "bigint", nullable: false),
                    last_uid = table.Column<long>(type: "bigint", nullable: false),
                    new_from = table.Column<long>(type: "bigint", nullable: false),
                    trying_uid = table.Column<long>(type: "bigint", nullable: true),
                    tries = table.Column<int>(type: "integer", nullable: false),
                    looked_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    problem = table.Column<string>(type: "character varying(500)", maxLength: 500, nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_mailbox_marks", x => x.mailbox);
                });

            migrationBuilder.CreateTable(
                name: "original_mails",
                columns: table => new
                {
                    mail_id = table.Column<long>(type: "bigint", nullable: false),
                    bytes = table.Column<byte[]>(type: "bytea", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_original_mails", x => x.mail_id);
                    table.ForeignKey(
                        name: "fk_original_mails_incoming_mails_mail_id",
                        column: x => x.mail_id,
                        principalTable: "incoming_mails",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_incoming_mails_from_taken_in_at",
                table: "incoming_mails",
                columns: new[] { "from", "taken_in_at" });

            migrationBuilder.CreateIndex(
                name: "ix_incoming_mails_message_id_digest",
                table: "incoming_mails",
                columns: new[] { "message_id", "digest" },
                unique: true,
                filter: "message_id IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "ix_incoming_mails_order_number",
                table: "incoming_mails",
                column: "order_number");

            migrationBuilder.CreateIndex(
                name: "ix_incoming_mails_source",
                table: "incoming_mails",
                column: "source",
                unique: true);

            AppendOnly.Protect(migrationBuilder, "original_mails");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "mailbox_marks");

            migrationBuilder.DropTable(
                name: "original_mails");

            migrationBuilder.DropTable(
                name: "incoming_mails");
        }
    }
}
