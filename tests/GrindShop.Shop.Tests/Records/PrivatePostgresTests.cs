using GrindShop.Shop.Records;
using GrindShop.Testing;

namespace GrindShop.Shop.Tests.Records;

public sealed class PrivatePostgresTests : IDisposable
{
    private readonly TestFolder folder = TestFolder.Make();

    public void Dispose() => folder.Dispose();

    private PrivatePostgresOptions Options => new(Path.Combine(folder.Path, "data")) { Durable = false };

    [Fact]
    public async Task Second_start_keeps_the_data()
    {
        await using (var first = await PrivatePostgres.StartAsync(Options))
            await Sql.RunAsync(await first.EnsureDatabaseAsync("grindshop"), "CREATE TABLE kept AS SELECT 42 AS number");

        await using var second = await PrivatePostgres.StartAsync(Options);
        Assert.Equal(42, await Sql.AskAsync(await second.EnsureDatabaseAsync("grindshop"), "SELECT number FROM kept"));
    }

    [Fact]
    public async Task Stopping_ends_the_server_and_leaves_no_socket()
    {
        var server = await PrivatePostgres.StartAsync(Options);
        var socketFolder = Sql.Host(server.ConnectionString("grindshop"));
        Assert.True(Directory.Exists(socketFolder));

        await server.DisposeAsync();
        await server.DisposeAsync();

        Assert.True(server.Exited.IsCompletedSuccessfully);
        Assert.False(Directory.Exists(socketFolder));
        Assert.False(File.Exists(Path.Combine(Options.DataFolder, "postgres", "postmaster.pid")));
    }

    [Fact]
    public async Task Other_users_have_no_way_in()
    {
        await using var server = await PrivatePostgres.StartAsync(Options);
        var maintenance = server.ConnectionString(PrivatePostgres.MaintenanceDatabase);

        Assert.Equal("", await Sql.AskAsync(maintenance, "SHOW listen_addresses"));
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(Sql.Host(maintenance)));
    }

    [Theory]
    [InlineData(true, "on")]
    [InlineData(false, "off")]
    public async Task Only_a_durable_server_waits_for_the_disk(bool durable, string fsync)
    {
        await using var server = await PrivatePostgres.StartAsync(Options with { Durable = durable });
        Assert.Equal(fsync, await Sql.AskAsync(server.ConnectionString(PrivatePostgres.MaintenanceDatabase), "SHOW fsync"));
    }

    [Fact]
    public async Task Pid_file_left_by_a_crash_does_not_stop_the_next_start()
    {
        await (await PrivatePostgres.StartAsync(Options)).DisposeAsync();
        var cluster = Path.Combine(Options.DataFolder, "postgres");
        // The number now belongs to another program: the one that runs this test.
        await File.WriteAllTextAsync(Path.Combine(cluster, "postmaster.pid"), $"{Environment.ProcessId}\n{cluster}\n1\n5432\n/tmp\n\n  1 1\n");

        await using var server = await PrivatePostgres.StartAsync(Options);
        Assert.Equal(1, await Sql.AskAsync(server.ConnectionString(PrivatePostgres.MaintenanceDatabase), "SELECT 1"));
    }

    [Fact]
    public async Task Half_made_cluster_of_an_interrupted_start_is_made_anew()
    {
        Directory.CreateDirectory(Path.Combine(Options.DataFolder, "postgres.new", "base"));
        await using var server = await PrivatePostgres.StartAsync(Options);
        Assert.False(Directory.Exists(Path.Combine(Options.DataFolder, "postgres.new")));
    }
}
