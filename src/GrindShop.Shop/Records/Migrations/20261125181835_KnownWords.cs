using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class KnownWords : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            Orders.Finding.KnownWords.Create(migrationBuilder);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            Orders.Finding.KnownWords.Drop(migrationBuilder);
        }
    }
}
