using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class PiecesRevised : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropCheckConstraint(
                name: "ck_order_cams_pieces",
                table: "order_cams");

            migrationBuilder.AddCheckConstraint(
                name: "ck_order_cams_pieces",
                table: "order_cams",
                sql: "quantity BETWEEN 0 AND 99 AND started BETWEEN 0 AND quantity AND shipped BETWEEN 0 AND started");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropCheckConstraint(
                name: "ck_order_cams_pieces",
                table: "order_cams");

            migrationBuilder.AddCheckConstraint(
                name: "ck_order_cams_pieces",
                table: "order_cams",
                sql: "quantity BETWEEN 1 AND 99 AND started BETWEEN 0 AND quantity AND shipped BETWEEN 0 AND started");
        }
    }
}
