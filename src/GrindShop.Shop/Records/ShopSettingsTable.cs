using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Records;

internal sealed class ShopSettingsTable : IEntityTypeConfiguration<ShopSettings>
{
    public void Configure(EntityTypeBuilder<ShopSettings> table)
    {
        table.ToTable("settings", t => t.HasCheckConstraint("ck_settings_one_row", "id = 1"));
        table.Property(settings => settings.Id).ValueGeneratedNever();
        table.Property(settings => settings.Version).IsRowVersion();
    }
}
