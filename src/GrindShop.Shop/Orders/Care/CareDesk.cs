using GrindShop.Shop.Feasibility;
using GrindShop.Shop.People;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders;

/// <summary>Who looks after an order, until when it may rest, and whom the desk has to call back.</summary>
public sealed class CareDesk(IDbContextFactory<ShopDb> factory, OrderDesk desk, Catalog catalog, TimeProvider clock)
{
    /// <summary>The names of all who may look after an order: those who sign in for the desk, and the owner.</summary>
    public async Task<IReadOnlyList<string>> PeopleAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var now = clock.GetUtcNow();
        return await (from person in db.Users
                      join part in db.UserRoles on person.Id equals part.UserId
                      join role in db.Roles on part.RoleId equals role.Id
                      where (role.Name == Roles.Desk || role.Name == Roles.Owner) && (person.LockoutEnd == null || person.LockoutEnd < now)
                      orderby person.DisplayName
                      select person.DisplayName).Distinct().ToListAsync(cancel);
    }

    public async Task<Outcome<Order>> AssignAsync(string number, uint version, string? to, string by, CancellationToken cancel = default) =>
        to is null || to == by || (await PeopleAsync(cancel)).Contains(to)
            ? await desk.ChangeAsync(number, version, order => order.Assign(to, by, clock.GetUtcNow()), cancel)
            : new Refusal("noSuchPerson", $"{to} does not work at the desk.");

    /// <param name="until">By the clock on the shop's wall.</param>
    public async Task<Outcome<Order>> SnoozeAsync(string number, uint version, DateTime until, string why, string by, CancellationToken cancel = default)
    {
        var shop = await ShopAsync(cancel);
        return await desk.ChangeAsync(number, version, order => order.Snooze(until, why, shop, by, clock.GetUtcNow()), cancel);
    }

    public Task<Outcome<Order>> WakeAsync(string number, uint version, string by, CancellationToken cancel = default) =>
        desk.ChangeAsync(number, version, order => order.Wake(by, clock.GetUtcNow()), cancel);

    /// <inheritdoc cref="Order.Seen"/>
    public Task<Outcome<Order>> SeenAsync(string number, long line, string by, CancellationToken cancel = default) =>
        desk.ChangeAsync(number, null, order => order.Seen(line, by, clock.GetUtcNow()), cancel);

    public async Task<Outcome<Order>> PlanCallAsync(string number, CallEntry entry, string by, CancellationToken cancel = default)
    {
        var shop = await ShopAsync(cancel);
        return await desk.ChangeAsync(number, null, order => order.PlanCall(entry, shop, by, clock.GetUtcNow()), cancel);
    }

    public Task<Outcome<Order>> CallDoneAsync(string number, int call, string by, CancellationToken cancel = default) =>
        desk.ChangeAsync(number, null, order => order.CallDone(call, by, clock.GetUtcNow()), cancel);

    public Task<Outcome<Order>> CallTriedAsync(string number, int call, int triesSeen, string by, CancellationToken cancel = default) =>
        desk.ChangeAsync(number, null, order => order.CallTried(call, triesSeen, by, clock.GetUtcNow()), cancel);

    private async Task<ShopSettings> ShopAsync(CancellationToken cancel) => (await catalog.ContentAsync(cancel)).Rules.Settings;
}
