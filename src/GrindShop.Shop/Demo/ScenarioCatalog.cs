using GrindShop.Shop.Blanks;
using GrindShop.Shop.Grinds;
using GrindShop.Shop.Orders;
using GrindShop.Shop.People;
using GrindShop.Shop.Records;
using GrindShop.Shop.Starting;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Demo;

/// <summary>Adds what stands before any order: settings, catalog, stock, tables, people and customers.</summary>
internal static class ScenarioCatalog
{
    private const int Opened = 365;

    public static async Task<ScenarioShop> AddAsync(ShopDb db, ShopScenario scenario, ScenarioCalendar calendar, CancellationToken cancel)
    {
        var numbers = await ScenarioBuying.NumbersAsync(db, scenario, cancel);
        var lots = Lots(scenario, numbers, calendar);
        if (!await db.Settings.AnyAsync(cancel))
            db.Add(scenario.Settings);
        db.AddRange(scenario.Families);
        db.AddRange(scenario.Vendors);
        db.AddRange(scenario.Blanks);
        db.AddRange(lots);
        db.AddRange(scenario.Rules);
        db.AddRange(scenario.Prices.Adders);
        db.AddRange(scenario.Prices.BasePrices.Select(price => Price(price, scenario)));
        db.AddRange(scenario.Prices.Repairs.Select(price => Price(price, scenario)));
        db.AddRange(scenario.Prices.QuantityBreaks);
        AddWaysIn(db, scenario, calendar);
        await AddPeopleAsync(db, scenario.People, cancel);
        await db.SaveChangesAsync(cancel);
        var prices = new PriceRules(await db.PriceListAsync(cancel), scenario.Settings.BlankMarkup);
        return new ScenarioShop(lots, numbers, prices, scenario.People, scenario.Vendors.FirstOrDefault(vendor => vendor.Kind == VendorKind.HeatTreater), scenario.Settings);
    }

    /// <summary>What customers may start from: the rules of thumb and the named grinds, set by the owner when the shop opened.</summary>
    private static void AddWaysIn(ShopDb db, ShopScenario scenario, ScenarioCalendar calendar)
    {
        var (by, at) = (Owner(scenario), calendar.At(Opened, ScenarioCalendar.StockComes));
        db.Add(new StartRuleSet(1, scenario.StartRules, by, at, "The shop's rules of thumb when it opened."));
        db.AddRange(scenario.Grinds.Select(grind => CatalogGrind.Add(grind.Code, grind.Family, grind.Entry, by, at, "In the list when the shop opened.")));
    }

    private static string Owner(ShopScenario scenario) => scenario.People.FirstOrDefault(person => person.Role == Roles.Owner)?.Name ?? Roles.Owner;

    private static List<BlankLot> Lots(ShopScenario scenario, IReadOnlyDictionary<int, string> numbers, ScenarioCalendar calendar)
    {
        var by = Owner(scenario);
        var purchases = scenario.Purchases.SelectMany(row => row.Lots, (row, lot) => (lot.LotNumber, Number: numbers[row.Order])).ToDictionary(lot => lot.LotNumber, lot => lot.Number);
        return [.. scenario.Lots.Select(lot => Lot(lot, purchases.GetValueOrDefault(lot.LotNumber), by, calendar))];
    }

    private static BlankLot Lot(ScenarioLot row, string? purchase, string by, ScenarioCalendar calendar)
    {
        var at = calendar.At(row.ReceivedDaysAgo, ScenarioCalendar.StockComes);
        var facts = new LotFacts { Supplier = row.Part.Supplier, HeatNumber = row.HeatNumber, Certificate = row.Certificate, PurchaseLine = purchase };
        var lot = BlankLot.Receive(row.Part, row.LotNumber, row.Location, row.Quantity, by, at, facts);
        if (row.Sample is { } sample)
            lot.Measure(sample, by, calendar.At(row.SampledDaysAgo, ScenarioCalendar.StockComes));
        if (row.Quarantine is { } reason)
            lot.Quarantine(reason, by, at);
        return lot;
    }

    private static BasePrice Price(ScenarioBasePrice price, ShopScenario scenario) => new()
    {
        EngineFamily = scenario.Families.First(family => family.Code == price.EngineFamily),
        Lifter = price.Lifter,
        Amount = price.Amount,
    };

    private static RepairPrice Price(ScenarioRepairPrice price, ShopScenario scenario) => new()
    {
        EngineFamily = scenario.Families.First(family => family.Code == price.EngineFamily),
        Kind = price.Kind,
        Amount = price.Amount,
    };

    private static async Task AddPeopleAsync(ShopDb db, IReadOnlyList<ScenarioPerson> people, CancellationToken cancel)
    {
        var roles = await db.Roles.ToListAsync(cancel);
        foreach (var name in Roles.All.Where(name => roles.All(role => role.Name != name)))
            roles.Add(db.Roles.Add(new IdentityRole(name) { NormalizedName = name.ToUpperInvariant() }).Entity);
        foreach (var person in people)
        {
            var user = db.Users.Add(User(person)).Entity;
            db.UserRoles.Add(new IdentityUserRole<string> { UserId = user.Id, RoleId = roles.First(role => role.Name == person.Role).Id });
        }
    }

    private static ShopUser User(ScenarioPerson person)
    {
        var user = new ShopUser
        {
            UserName = person.UserName,
            NormalizedUserName = person.UserName.ToUpperInvariant(),
            Email = person.UserName,
            NormalizedEmail = person.UserName.ToUpperInvariant(),
            EmailConfirmed = true,
            LockoutEnabled = true,
            DisplayName = person.Name,
        };
        user.PasswordHash = new PasswordHasher<ShopUser>().HashPassword(user, person.Password);
        return user;
    }
}
