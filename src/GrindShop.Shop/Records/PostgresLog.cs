namespace GrindShop.Shop.Records;

/// <summary>What the server has written to its log since a given start.</summary>
internal sealed record PostgresLog(string File, long Start)
{
    public static PostgresLog From(string file) => new(file, System.IO.File.Exists(file) ? new FileInfo(file).Length : 0);

    public PrivatePostgresException Failure(PostgresCluster cluster)
    {
        var lines = Lines();
        var line = lines.LastOrDefault(IsFatal) ?? lines.LastOrDefault("it wrote nothing");
        return line.Contains("lock file", StringComparison.Ordinal)
            ? PostgresCluster.InUse(cluster.DataFolder)
            : new(PostgresFailure.Broken, $"PostgreSQL did not start on {cluster.Folder}: {line} (log: {File}). Restore a backup if the folder is damaged.");
    }

    private static bool IsFatal(string line) => line.Contains("FATAL:", StringComparison.Ordinal) || line.Contains("PANIC:", StringComparison.Ordinal);

    private List<string> Lines()
    {
        if (!System.IO.File.Exists(File)) return [];
        using var stream = System.IO.File.Open(File, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        stream.Position = Start;
        using var reader = new StreamReader(stream);
        return [.. reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
    }
}
