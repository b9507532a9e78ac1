namespace GrindShop.Shop.Records;

/// <summary>
/// The account the server runs under. PostgreSQL refuses root, so root hands the cluster to an unprivileged account;
/// anybody else runs the server as himself.
/// </summary>
internal sealed record ServerAccount(string? Ids)
{
    private const string DistributionUser = "postgres";

    /// <summary>The owner of a kept cluster, else the account that comes with the PostgreSQL package.</summary>
    public static async Task<ServerAccount> ChooseAsync(string cluster, CancellationToken cancel)
    {
        if (!Environment.IsPrivilegedProcess) return new((string?)null);
        var owner = await Command.RunAsync(["stat", "-c", "%u:%g", cluster], cancel);
        var kept = owner.Output.Trim();
        return owner.Ok && !kept.StartsWith("0:", StringComparison.Ordinal) ? new(kept) : await DistributionAsync(cancel);
    }

    private static async Task<ServerAccount> DistributionAsync(CancellationToken cancel)
    {
        var user = await Command.RunAsync(["id", "-u", DistributionUser], cancel);
        var group = await Command.RunAsync(["id", "-g", DistributionUser], cancel);
        if (user.Ok && group.Ok) return new($"{user.Output.Trim()}:{group.Output.Trim()}");
        throw new PrivatePostgresException(PostgresFailure.NoAccount,
            $"PostgreSQL does not run as root and there is no user '{DistributionUser}': add one (useradd --system {DistributionUser}) or run as another user.");
    }

    /// <summary>Words that go before a command so that it runs as this account.</summary>
    public IEnumerable<string> Prefix => Ids is null ? [] :
        ["setpriv", $"--reuid={Ids.Split(':')[0]}", $"--regid={Ids.Split(':')[1]}", "--clear-groups", "--no-new-privs", "--"];

    /// <summary>Gives the folder and all in it to the account and makes sure that the account can work there.</summary>
    public async Task TakeOverAsync(string folder, CancellationToken cancel)
    {
        if (Ids is not null) await ChownAsync(Ids, folder, cancel);
        await RequireReachAsync(folder, cancel);
    }

    private static async Task ChownAsync(string ids, string folder, CancellationToken cancel)
    {
        var done = await Command.RunAsync(["chown", "-R", "-h", ids, folder], cancel);
        if (!done.Ok)
            throw new PrivatePostgresException(PostgresFailure.NotWritable, $"{folder} cannot be given to the server's account: {done.LastLine}");
    }

    /// <summary>A folder under a closed parent, such as /root, is out of the server's reach.</summary>
    private async Task RequireReachAsync(string folder, CancellationToken cancel)
    {
        if ((await Command.RunAsync([.. Prefix, "test", "-w", folder, "-a", "-x", folder], cancel)).Ok) return;
        throw Ids is null
            ? new PrivatePostgresException(PostgresFailure.NotWritable, $"{folder} is read-only or belongs to another user: run as its owner or as root.")
            : new PrivatePostgresException(PostgresFailure.NotReachable,
                $"{folder} is out of reach for the unprivileged account that PostgreSQL runs under: " +
                $"set {PrivatePostgresOptions.DataSetting} to a folder whose parents every user may enter (not under /root).");
    }
}
