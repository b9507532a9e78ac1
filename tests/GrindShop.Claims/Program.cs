using System.Globalization;
using GrindShop.Shop;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Claims;

/// <summary>
/// A process that claims one blank for each of many orders, all at once: arguments are the connection string, the part number, the number of the
/// gate (an advisory lock that opens for every process together) and the orders. Prints a line an order: its number and "taken" or why not.
/// </summary>
internal static class Program
{
    public static async Task Main(string[] arguments)
    {
        if (arguments is not [var connection, var part, var gate, .. var numbers])
            throw new ArgumentException("connection part gate order...");
        await using var services = new ServiceCollection().AddLogging().AddShop(connection).BuildServiceProvider();
        var factory = services.GetRequiredService<IDbContextFactory<ShopDb>>();
        await using var db = await factory.CreateDbContextAsync();
        var orders = await db.Orders.AsNoTracking().Where(order => numbers.Contains(order.Number)).ToListAsync();
        await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_lock_shared({long.Parse(gate, CultureInfo.InvariantCulture)})");
        var allocation = services.GetRequiredService<Allocation>();
        var outcomes = await Task.WhenAll(orders.Select(order => Task.Run(() => ClaimAsync(allocation, order, part))));
        foreach (var line in outcomes)
            Console.WriteLine(line);
    }

    private static async Task<string> ClaimAsync(Allocation allocation, Order order, string part)
    {
        var outcome = await allocation.StartAsync(order.Number, order.Version, part, $"process {Environment.ProcessId}");
        return $"{order.Number} {outcome.Refusal?.Code ?? "taken"}";
    }
}
