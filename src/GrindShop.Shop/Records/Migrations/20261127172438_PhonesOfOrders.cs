using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <summary>Who calls is found by the last digits of the numbers given with orders; the model does not know of this index.</summary>
    public partial class PhonesOfOrders : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder) =>
            migrationBuilder.Sql("CREATE INDEX ix_orders_phone_digits ON orders (reverse(regexp_replace(contact->>'phone', '[^0-9]', '', 'g')) text_pattern_ops);");

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder) => migrationBuilder.Sql("DROP INDEX ix_orders_phone_digits;");
    }
}
