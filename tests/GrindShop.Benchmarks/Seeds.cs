namespace GrindShop.Benchmarks;

/// <summary>The demo scenario's folder.</summary>
internal static class Seeds
{
    public static string Folder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "GrindShop.sln")))
            folder = folder.Parent ?? throw new DirectoryNotFoundException("Run the benchmarks inside the repository.");
        return Path.Combine(folder.FullName, "seed");
    }
}
