using System.Diagnostics;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace GrindShop.Shop.Tests.Allocating;

/// <summary>Two hundred claims on fifty blanks from four processes that start together.</summary>
public sealed class ManyProcessesTests
{
    private const int Blanks = 50, Claims = 200, Processes = 4, ConnectionsEach = 12;
    private const long Gate = 918_273;

    [Fact]
    public async Task Exactly_as_many_claims_succeed_as_there_are_blanks_none_twice_and_none_lost()
    {
        await using var database = await ShopTemplates.Scenario.CopyAsync();
        await using var shop = new TestShop(database);
        var (part, lot) = await shop.StockAsync(Blanks);
        var orders = await shop.AcceptedOrdersAsync(part.PartNumber, Claims);

        var few = new NpgsqlConnectionStringBuilder(database.ConnectionString) { MaxPoolSize = ConnectionsEach, Timeout = 300, CommandTimeout = 300 };
        var lines = await ClaimAsync(few.ToString(), part.PartNumber, [.. orders.Select(order => order.Number)]);

        Assert.Equal(orders.Select(order => order.Number).Order(), lines.Select(line => line[0]).Order());
        Assert.Equal(Blanks, lines.Count(line => line[1] == "taken"));
        Assert.All(lines.Where(line => line[1] != "taken"), line => Assert.Equal("noStock", line[1]));
        await using var db = shop.Db();
        var jobs = await db.Jobs.Include(job => job.Order).Where(job => job.BlankLotId == lot.Id).ToListAsync();
        Assert.Equal(lines.Where(line => line[1] == "taken").Select(line => line[0]).Order(), jobs.Select(job => job.Order.Number).Order());
        var held = await db.BlankLots.Include(l => l.Movements).SingleAsync(l => l.Id == lot.Id);
        Assert.Equal((Blanks, Blanks, 0), (held.OnHand, held.Allocated, held.Available));
        Assert.Equal(Blanks, held.Movements.Count(line => line.Kind == StockMovementKind.Allocate));
        var ids = orders.Select(order => order.Id).ToList();
        Assert.Equal(Claims - Blanks, await db.Orders.CountAsync(order => ids.Contains(order.Id) && order.State == OrderState.Accepted));
    }

    private static async Task<List<string[]>> ClaimAsync(string connection, string part, string[] numbers)
    {
        await using var gate = new NpgsqlConnection(connection);
        await gate.OpenAsync();
        await SqlAsync(gate, $"SELECT pg_advisory_lock({Gate})");
        var running = numbers.Chunk(numbers.Length / Processes).Select(some => Start(connection, part, some)).ToList();
        var outputs = running.Select(process => process.StandardOutput.ReadToEndAsync()).ToList();
        var errors = running.Select(process => process.StandardError.ReadToEndAsync()).ToList();
        while (await SqlAsync(gate, "SELECT count(*) FROM pg_locks WHERE locktype = 'advisory' AND NOT granted AND database = (SELECT oid FROM pg_database WHERE datname = current_database())") < Processes)
            Assert.DoesNotContain(running, process => process.HasExited);
        await SqlAsync(gate, $"SELECT pg_advisory_unlock({Gate})");
        await Task.WhenAll(running.Select(process => process.WaitForExitAsync()));
        Assert.All(await Task.WhenAll(errors), text => Assert.Equal("", text));
        return [.. (await Task.WhenAll(outputs)).SelectMany(text => text.Split('\n', StringSplitOptions.RemoveEmptyEntries)).Select(line => line.Trim().Split(' '))];
    }

    private static Process Start(string connection, string part, string[] numbers) => Process.Start(
        new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "GrindShop.Claims.dll"), connection, part, Gate.ToString(System.Globalization.CultureInfo.InvariantCulture), .. numbers])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;

    private static async Task<long> SqlAsync(NpgsqlConnection connection, string sql)
    {
        await using var command = new NpgsqlCommand(sql, connection);
        return await command.ExecuteScalarAsync() is long count ? count : 0;
    }
}
