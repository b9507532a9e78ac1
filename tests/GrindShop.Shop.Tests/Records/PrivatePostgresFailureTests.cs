using GrindShop.Shop.Records;
using GrindShop.Testing;

namespace GrindShop.Shop.Tests.Records;

public sealed class PrivatePostgresFailureTests : IDisposable
{
    private readonly TestFolder folder = TestFolder.Make();

    public void Dispose() => folder.Dispose();

    private PrivatePostgresOptions Options => new(folder.Path) { Durable = false };
    private string Cluster => Path.Combine(folder.Path, "postgres");

    [Fact]
    public async Task Folder_of_a_running_instance_is_refused()
    {
        await using var running = await PrivatePostgres.StartAsync(Options);
        await RefusedAsync(Options, PostgresFailure.InUse, folder.Path);
    }

    [Fact]
    public async Task Folder_without_a_cluster_in_it_is_refused_and_left_alone()
    {
        Directory.CreateDirectory(Cluster);
        await File.WriteAllTextAsync(Path.Combine(Cluster, "notes.txt"), "keep me");

        await RefusedAsync(Options, PostgresFailure.Broken, Cluster);
        Assert.Equal("keep me", await File.ReadAllTextAsync(Path.Combine(Cluster, "notes.txt")));
    }

    [Fact]
    public async Task Damaged_cluster_is_refused_with_the_servers_own_reason()
    {
        await (await PrivatePostgres.StartAsync(Options)).DisposeAsync();
        File.Delete(Path.Combine(Cluster, "global", "pg_control"));

        await RefusedAsync(Options, PostgresFailure.Broken, "pg_control");
    }

    [Fact]
    public async Task Cluster_of_another_major_version_is_refused()
    {
        await (await PrivatePostgres.StartAsync(Options)).DisposeAsync();
        await File.WriteAllTextAsync(Path.Combine(Cluster, "PG_VERSION"), "9\n");

        await RefusedAsync(Options, PostgresFailure.OtherVersion, "made by PostgreSQL 9");
    }

    [Fact]
    public async Task Wrong_binaries_setting_is_named() =>
        await RefusedAsync(Options with { BinFolder = folder.Path }, PostgresFailure.NoBinaries, PrivatePostgresOptions.BinSetting);

    [Fact]
    public async Task Data_folder_that_is_a_file_is_refused()
    {
        var file = Path.Combine(folder.Path, "file");
        await File.WriteAllTextAsync(file, "");
        await RefusedAsync(Options with { DataFolder = file }, PostgresFailure.NotWritable, file);
    }

    [Fact]
    public async Task Data_folder_out_of_the_servers_reach_is_refused()
    {
        if (OperatingSystem.IsWindows()) return;
        var closed = Directory.CreateDirectory(Path.Combine(folder.Path, "closed"), UnixFileMode.None).FullName;
        if (Environment.IsPrivilegedProcess)
            await RefusedAsync(Options with { DataFolder = Path.Combine(closed, "data") }, PostgresFailure.NotReachable, "out of reach");
        else
            await RefusedAsync(Options with { DataFolder = closed }, PostgresFailure.NotWritable, closed);
    }

    [Fact]
    public async Task Refused_folder_is_free_again()
    {
        await RefusedAsync(Options with { BinFolder = folder.Path }, PostgresFailure.NoBinaries, "no working postgres");
        await using var server = await PrivatePostgres.StartAsync(Options);
        Assert.False(server.Exited.IsCompleted);
    }

    private static async Task RefusedAsync(PrivatePostgresOptions options, PostgresFailure reason, string says)
    {
        var refusal = await Assert.ThrowsAsync<PrivatePostgresException>(() => PrivatePostgres.StartAsync(options));
        Assert.Equal(reason, refusal.Reason);
        Assert.Contains(says, refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', refusal.Message);
    }
}
