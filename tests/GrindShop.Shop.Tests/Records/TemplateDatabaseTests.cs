using GrindShop.Testing;

namespace GrindShop.Shop.Tests.Records;

public class TemplateDatabaseTests
{
    private static int builds;
    private static readonly TemplateDatabase Template = new("template_check", async connection =>
    {
        Interlocked.Increment(ref builds);
        await Sql.RunAsync(connection, "CREATE TABLE part AS SELECT 'P-1'::text AS number");
    });

    [Fact]
    public async Task Copies_are_built_once_and_do_not_see_each_other()
    {
        var copies = await Task.WhenAll(Template.CopyAsync(), Template.CopyAsync());
        await using var one = copies[0];
        await using var other = copies[1];

        await Sql.RunAsync(one.ConnectionString, "INSERT INTO part VALUES ('P-2')");

        Assert.Equal(2L, await Sql.AskAsync(one.ConnectionString, "SELECT count(*) FROM part"));
        Assert.Equal(1L, await Sql.AskAsync(other.ConnectionString, "SELECT count(*) FROM part"));
        Assert.Equal(1, builds);
    }

    [Fact]
    public async Task Disposed_copy_is_gone()
    {
        var copy = await Template.CopyAsync();
        await copy.DisposeAsync();

        var maintenance = await PostgresServer.ConnectionStringAsync("postgres");
        Assert.Equal(0L, await Sql.AskAsync(maintenance, $"SELECT count(*) FROM pg_database WHERE datname = '{copy.Name}'"));
    }
}
