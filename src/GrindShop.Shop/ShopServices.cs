using GrindShop.Shop.Allocating;
using GrindShop.Shop.BlankCatalog;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Drafts;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Grinds;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Orders.Finding;
using GrindShop.Shop.Planning;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Starting;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace GrindShop.Shop;

public static class ShopServices
{
    /// <summary>The shop's database and everything that works on it.</summary>
    public static IServiceCollection AddShop(this IServiceCollection services, string connectionString)
    {
        services.TryAddSingleton(TimeProvider.System);
        services.AddNpgsqlDataSource(connectionString);
        services.AddDbContextFactory<ShopDb>(options => options.UseShop(connectionString));
        services.AddSingleton<CatalogDesk>();
        services.AddSingleton<BlankFileStore>();
        services.AddSingleton<CatalogImport>();
        services.AddSingleton(new Catalog(new OwnPool(connectionString, "catalog")));
        services.AddSingleton<RuleBook>();
        services.AddSingleton<ShopSettingsBook>();
        services.AddSingleton<PriceBook>();
        services.AddSingleton<Receiving>();
        services.AddSingleton<StockRoom>();
        services.AddSingleton<StockPages>();
        services.AddSingleton<SpecIntake>();
        services.AddSingleton<CustomerMail>();
        services.AddSingleton<MailIntake>();
        services.AddSingleton<MailSorting>();
        services.AddSingleton<MailboxWorker>();
        services.AddHostedService(provider => provider.GetRequiredService<MailboxWorker>());
        services.AddSingleton<StartRuleBook>();
        services.AddSingleton<GrindBook>();
        services.AddSingleton<DraftBook>();
        services.AddHostedService<OldDrafts>();
        services.AddSingleton<OrderDesk>();
        services.AddSingleton<LotChoice>();
        services.AddSingleton<CallerBook>();
        services.AddSingleton<OrderSearch>();
        services.AddSingleton<InboxBook>();
        services.AddSingleton<CareDesk>();
        services.AddSingleton<CustomerDesk>();
        services.AddHostedService<QuoteExpiry>();
        services.AddSingleton<Allocation>();
        services.AddSingleton<JobFloor>();
        services.AddSingleton<BlankReturn>();
        services.AddSingleton<OrderChanging>();
        services.AddSingleton<NextBest>();
        services.AddSingleton<ScrapDesk>();
        services.AddSingleton<BatchAllocation>();
        services.AddSingleton<Backlog>();
        services.AddSingleton<Purchasing>();
        services.AddSingleton<BuyingBook>();
        services.AddSingleton<BuyingTerms>();
        services.AddMail();
        services.AddSingleton<MillRunBook>();
        services.AddSingleton<ShelfBook>();
        services.AddSingleton<BlankMap>();
        services.AddSingleton<ChangeListener>();
        services.AddHostedService(provider => provider.GetRequiredService<ChangeListener>());
        return services;
    }
}
