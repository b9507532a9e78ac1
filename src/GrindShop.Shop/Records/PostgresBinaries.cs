using System.Text.RegularExpressions;

namespace GrindShop.Shop.Records;

/// <summary>A folder whose <c>postgres</c> and <c>initdb</c> both run and agree on their major version.</summary>
internal sealed partial record PostgresBinaries(string Folder, int Major)
{
    private const string DistributionFolder = "/usr/lib/postgresql";

    public string Postgres => Path.Combine(Folder, "postgres");
    public string Initdb => Path.Combine(Folder, "initdb");

    /// <summary>The first usable binaries; for kept data, the first of the version that made it.</summary>
    public static async Task<PostgresBinaries> FindAsync(string? setting, int? keptMajor, string cluster, CancellationToken cancel)
    {
        var found = new List<PostgresBinaries>();
        foreach (var folder in Candidates(setting))
        {
            if (await ProbeAsync(folder, cancel) is not { } binaries) continue;
            if (keptMajor is null || binaries.Major == keptMajor) return binaries;
            found.Add(binaries);
        }
        throw found.Count == 0 ? Missing(setting) : OtherVersion(found, keptMajor, cluster);
    }

    private static IEnumerable<string> Candidates(string? setting) =>
        setting is null ? OnPath().Concat(FromDistribution()).Distinct() : [Path.GetFullPath(setting)];

    // A link on PATH leads to the folder where initdb finds its share files.
    private static IEnumerable<string> OnPath() =>
        from folder in (Environment.GetEnvironmentVariable("PATH") ?? "").Split(':', StringSplitOptions.RemoveEmptyEntries)
        let file = Path.Combine(folder, "postgres")
        where Path.IsPathRooted(folder) && File.Exists(file)
        select Path.GetDirectoryName(File.ResolveLinkTarget(file, returnFinalTarget: true)?.FullName ?? file)!;

    private static IEnumerable<string> FromDistribution() =>
        !Directory.Exists(DistributionFolder) ? [] :
        from folder in Directory.GetDirectories(DistributionFolder)
        let major = int.TryParse(Path.GetFileName(folder), out var number) ? number : 0
        orderby major descending
        select Path.Combine(folder, "bin");

    private static async Task<PostgresBinaries?> ProbeAsync(string folder, CancellationToken cancel)
    {
        var server = await MajorAsync(Path.Combine(folder, "postgres"), cancel);
        var maker = await MajorAsync(Path.Combine(folder, "initdb"), cancel);
        return server is { } major && maker == major ? new(folder, major) : null;
    }

    private static async Task<int?> MajorAsync(string binary, CancellationToken cancel)
    {
        var answer = await Command.RunAsync([binary, "--version"], cancel);
        var match = VersionNumber().Match(answer.Output);
        return answer.Ok && match.Success ? int.Parse(match.Groups[1].ValueSpan) : null;
    }

    [GeneratedRegex(@"\(PostgreSQL\) (\d+)")]
    private static partial Regex VersionNumber();

    private static PrivatePostgresException Missing(string? setting) => new(PostgresFailure.NoBinaries, setting is null
        ? "PostgreSQL was not found: install it (Debian, Ubuntu: apt-get install postgresql) " +
          $"or set {PrivatePostgresOptions.BinSetting} to the folder that holds postgres and initdb."
        : $"{PrivatePostgresOptions.BinSetting}={setting} holds no working postgres and initdb.");

    private static PrivatePostgresException OtherVersion(List<PostgresBinaries> found, int? kept, string cluster) => new(
        PostgresFailure.OtherVersion,
        $"{cluster} was made by PostgreSQL {kept}, but only {string.Join(", ", found.Select(b => b.Major).Distinct())} was found: " +
        $"install PostgreSQL {kept}, or restore a backup into a new {PrivatePostgresOptions.DataSetting}.");
}
