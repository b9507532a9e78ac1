using GrindShop.Shop.Orders.Finding;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace GrindShop.Shop.Tests.Orders.Finding;

/// <summary>On many orders every way of finding one goes through its index.</summary>
public sealed class SearchPlanTests(SearchedShop shop) : IClassFixture<SearchedShop>
{
    [Theory]
    [InlineData("ix_known_words_document")]
    [InlineData("ix_known_words_names")]
    [InlineData("ix_known_words_digits")]
    public async Task Indexes_are_used_on_a_large_table(string index)
    {
        await using var db = shop.Shop.Db();
        await using var transaction = await db.Database.BeginTransactionAsync();
        await db.Database.ExecuteSqlRawAsync(ManyWords);
        await db.Database.ExecuteSqlRawAsync("ANALYZE known_words");

        var plan = await PlanAsync(db, OrderSearch.Sql(OrderQuestion.Of("rushborne 555-0128"), 1));

        Assert.True(plan.Contains(index, StringComparison.Ordinal), plan);
        Assert.DoesNotContain("Seq Scan on known_words", plan, StringComparison.Ordinal);
        await transaction.RollbackAsync();
    }

    private const string ManyWords = """
        INSERT INTO known_words (source, source_id, order_id, place, weight, is_name, words)
            SELECT 'test', n, (SELECT min(id) FROM orders), p.place, p.weight, p.weight > .5, md5(n::text || p.place) || ' ' || (5550000000 + n * 13)::text
            FROM generate_series(1, 10000) n, (VALUES ('customer', 1), ('phone', 1), ('history', .4)) AS p (place, weight);
        """;

    private static async Task<string> PlanAsync(ShopDb db, FormattableString sql)
    {
        await using var command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = "EXPLAIN " + string.Format(null, sql.Format, [.. Enumerable.Range(1, sql.ArgumentCount).Select(i => (object)$"${i}")]);
        foreach (var value in sql.GetArguments())
            command.Parameters.Add(new NpgsqlParameter { Value = value });
        var lines = new List<string>();
        await using var reader = await command.ExecuteReaderAsync();
        while (await reader.ReadAsync())
            lines.Add(reader.GetString(0));
        return string.Join('\n', lines);
    }
}
