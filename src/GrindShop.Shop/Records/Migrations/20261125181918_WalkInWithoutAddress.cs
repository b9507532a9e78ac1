using GrindShop.Shop.Orders;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class WalkInWithoutAddress : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            ContactCarryOver.FromCustomers(migrationBuilder);

            migrationBuilder.DropCheckConstraint(
                name: "ck_customers_reachable",
                table: "customers");

            migrationBuilder.AddCheckConstraint(
                name: "ck_orders_reachable",
                table: "orders",
                sql: "channel IN ('Phone', 'WalkIn') OR coalesce(btrim(contact->>'email'), '') <> '' OR coalesce(btrim(contact->>'phone'), '') <> ''");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropCheckConstraint(
                name: "ck_orders_reachable",
                table: "orders");

            migrationBuilder.AddCheckConstraint(
                name: "ck_customers_reachable",
                table: "customers",
                sql: "email IS NOT NULL OR phone IS NOT NULL");
        }
    }
}
