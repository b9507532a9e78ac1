using GrindShop.Testing;
using Npgsql;

namespace GrindShop.Shop.Tests.Records;

/// <summary>What the database itself refuses, whoever asks.</summary>
public sealed class LedgerTests(LedgerTests.OneScenario scenario) : IClassFixture<LedgerTests.OneScenario>
{
    [Theory]
    [InlineData("UPDATE order_events SET what = 'never was'")]
    [InlineData("DELETE FROM order_events")]
    [InlineData("TRUNCATE order_events")]
    [InlineData("UPDATE job_events SET by = 'nobody'")]
    [InlineData("DELETE FROM job_events")]
    [InlineData("TRUNCATE job_events")]
    [InlineData("UPDATE quotes SET total = 1")]
    [InlineData("DELETE FROM quotes")]
    [InlineData("TRUNCATE quotes")]
    [InlineData("TRUNCATE deposits")]
    [InlineData("TRUNCATE order_revisions")]
    [InlineData("UPDATE stock_movements SET on_hand_change = 1")]
    [InlineData("DELETE FROM stock_movements")]
    [InlineData("TRUNCATE stock_movements")]
    public async Task Histories_are_only_added_to(string statement) =>
        Assert.Equal(PostgresErrorCodes.RestrictViolation, (await Assert.ThrowsAsync<PostgresException>(() => Sql.RunAsync(scenario.Database.ConnectionString, statement))).SqlState);

    [Theory]
    [InlineData("UPDATE blank_lots SET on_hand = -1, allocated = -1")]
    [InlineData("UPDATE blank_lots SET on_hand = -1, allocated = 0")]
    [InlineData("UPDATE blank_lots SET allocated = on_hand + 1")]
    [InlineData("UPDATE orders SET price = -1")]
    [InlineData("UPDATE orders SET promised_on = NULL")]
    [InlineData("UPDATE order_cams SET started = quantity + 1")]
    [InlineData("UPDATE order_cams SET shipped = started + 1")]
    [InlineData("UPDATE orders SET contact = '{}' WHERE channel = 'Web'")]
    [InlineData("UPDATE blank_parts SET case_depth_in = NULL")]
    [InlineData("INSERT INTO settings SELECT 2, shop_name, address, phone, email, time_zone, cleanup_in, least_induction_case_in, least_carburized_case_in, usual_grind_days, heat_treat_extra_days, blank_markup FROM settings")]
    public async Task Impossible_rows_are_refused(string statement) =>
        Assert.Equal(PostgresErrorCodes.CheckViolation, (await Assert.ThrowsAsync<PostgresException>(() => Sql.RunAsync(scenario.Database.ConnectionString, statement))).SqlState);

    /// <summary>One copy for all: nothing here changes it.</summary>
    public sealed class OneScenario : IAsyncLifetime
    {
        internal TestDatabase Database { get; private set; } = null!;

        public async Task InitializeAsync() => Database = await ShopTemplates.Scenario.CopyAsync();

        public async Task DisposeAsync() => await Database.DisposeAsync();
    }
}
