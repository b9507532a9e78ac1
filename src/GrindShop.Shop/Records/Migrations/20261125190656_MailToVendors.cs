using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class MailToVendors : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "ix_purchase_orders_number",
                table: "purchase_orders");

            migrationBuilder.AddColumn<string>(
                name: "email",
                table: "vendors",
                type: "character varying(200)",
                maxLength: 200,
                nullable: true);

            migrationBuilder.AlterColumn<string>(
                name: "order_number",
                table: "outgoing_mails",
                type: "character varying(20)",
                maxLength: 20,
                nullable: true,
                oldClrType: typeof(string),
                oldType: "character varying(20)",
                oldMaxLength: 20);

            migrationBuilder.AddColumn<string>(
                name: "purchase_number",
                table: "outgoing_mails",
                type: "character varying(20)",
                maxLength: 20,
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "told",
                table: "order_events",
                type: "character varying(1000)",
                maxLength: 1000,
                nullable: true);

            migrationBuilder.AddUniqueConstraint(
                name: "ak_purchase_orders_number",
                table: "purchase_orders",
                column: "number");

            migrationBuilder.CreateIndex(
                name: "ix_outgoing_mails_purchase_number",
                table: "outgoing_mails",
                column: "purchase_number");

            migrationBuilder.AddCheckConstraint(
                name: "ck_outgoing_mails_about",
                table: "outgoing_mails",
                sql: "(order_number IS NULL) <> (purchase_number IS NULL)");

            migrationBuilder.AddForeignKey(
                name: "fk_outgoing_mails_purchase_orders_purchase_number",
                table: "outgoing_mails",
                column: "purchase_number",
                principalTable: "purchase_orders",
                principalColumn: "number",
                onDelete: ReferentialAction.Restrict);

            Orders.Finding.KnownWords.Change(migrationBuilder, Orders.Finding.WordSources.Letters);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "fk_outgoing_mails_purchase_orders_purchase_number",
                table: "outgoing_mails");

            migrationBuilder.DropUniqueConstraint(
                name: "ak_purchase_orders_number",
                table: "purchase_orders");

            migrationBuilder.DropIndex(
                name: "ix_outgoing_mails_purchase_number",
                table: "outgoing_mails");

            migrationBuilder.DropCheckConstraint(
                name: "ck_outgoing_mails_about",
                table: "outgoing_mails");

            migrationBuilder.DropColumn(
                name: "email",
                table: "vendors");

            migrationBuilder.DropColumn(
                name: "purchase_number",
                table: "outgoing_mails");

            migrationBuilder.DropColumn(
                name: "told",
                table: "order_events");

            migrationBuilder.AlterColumn<string>(
                name: "order_number",
                table: "outgoing_mails",
                type: "character varying(20)",
                maxLength: 20,
                nullable: false,
                defaultValue: "",
                oldClrType: typeof(string),
                oldType: "character varying(20)",
                oldMaxLength: 20,
                oldNullable: true);

            migrationBuilder.CreateIndex(
                name: "ix_purchase_orders_number",
                table: "purchase_orders",
                column: "number",
                unique: true);
        }
    }
}
