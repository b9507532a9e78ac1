using System.Globalization;
using GrindShop.Shop.Planning;
using GrindShop.Testing;

namespace GrindShop.Shop.Tests.Planning;

/// <summary>Skips where the OR-Library's files are not at hand: shared/data beside the repository or above it.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class LibraryTheoryAttribute : TheoryAttribute
{
    public LibraryTheoryAttribute()
    {
        if (PublishedMedian.Folder is null)
            Skip = "The OR-Library's p-median files (shared/data) are not at hand.";
    }
}

/// <summary>An OR-Library p-median file: "nodes edges p", then "from to length" an edge; costs are shortest paths between nodes.</summary>
internal static class PublishedMedian
{
    public static string? Folder { get; } = Find(new DirectoryInfo(ShopTemplates.SeedFolder));

    public static ServingProblem Read(string file, bool lastCounts)
    {
        var lines = File.ReadLines(Path.Combine(Folder!, file)).Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .Where(line => line.Length > 0).Select(line => Array.ConvertAll(line, text => int.Parse(text, CultureInfo.InvariantCulture))).ToList();
        var nodes = lines[0][0];
        var edges = lines.Skip(1).GroupBy(edge => (Math.Min(edge[0], edge[1]), Math.Max(edge[0], edge[1])))
            .ToDictionary(same => same.Key, same => lastCounts ? same.Last()[2] : same.Min(edge => edge[2]));
        return Problem(nodes, Shortest(nodes, edges));
    }

    /// <summary>Floyd and Warshall.</summary>
    private static int[,] Shortest(int nodes, Dictionary<(int, int), int> edges)
    {
        const int far = int.MaxValue / 4;
        var paths = new int[nodes, nodes];
        for (var i = 0; i < nodes; i++)
            for (var j = 0; j < nodes; j++)
                paths[i, j] = i == j ? 0 : edges.GetValueOrDefault((Math.Min(i, j) + 1, Math.Max(i, j) + 1), far);
        for (var via = 0; via < nodes; via++)
            for (var i = 0; i < nodes; i++)
                for (var j = 0; j < nodes; j++)
                    paths[i, j] = Math.Min(paths[i, j], paths[i, via] + paths[via, j]);
        return paths;
    }

    private static ServingProblem Problem(int nodes, int[,] paths)
    {
        var problem = new ServingProblem([.. Enumerable.Repeat(1, nodes)], [.. Enumerable.Repeat(1_000_000, nodes)], nodes);
        for (var i = 0; i < nodes; i++)
            for (var j = 0; j < nodes; j++)
                problem[i, j] = paths[i, j];
        return problem;
    }

    private static string? Find(DirectoryInfo? folder) => folder is null ? null
        : Path.Combine(folder.FullName, "shared", "data") is var data && File.Exists(Path.Combine(data, "pmed1.txt")) ? data
        : Find(folder.Parent);
}
