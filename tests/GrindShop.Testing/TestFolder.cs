using GrindShop.Shop.Records;

namespace GrindShop.Testing;

/// <summary>A folder for one test or one test process, which the server's unprivileged account can enter.</summary>
public sealed record TestFolder(string Path) : IDisposable
{
    private const string Prefix = "grindshop-tests-";
    private const UnixFileMode Enterable = (UnixFileMode)0b111_001_001;
    private static readonly FileStreamOptions Held = new() { Mode = FileMode.Open, Access = FileAccess.ReadWrite, Share = FileShare.None };
    private static readonly TimeSpan Abandoned = TimeSpan.FromMinutes(5);

    public static TestFolder Make()
    {
        var folder = Directory.CreateTempSubdirectory(Prefix);
        if (!OperatingSystem.IsWindows()) folder.UnixFileMode = Enterable;
        return new(folder.FullName);
    }

    /// <summary>Removes what killed test processes left behind: old folders whose lock nobody holds, and the socket each names.</summary>
    public static void SweepAbandoned()
    {
        foreach (var folder in new DirectoryInfo(System.IO.Path.GetTempPath()).GetDirectories(Prefix + "*"))
            if (DateTime.UtcNow - folder.LastWriteTimeUtc > Abandoned) Sweep(folder.FullName);
    }

    private static void Sweep(string folder)
    {
        try
        {
            using var hold = new StreamReader(File.Open(System.IO.Path.Combine(folder, "postgres.lock"), Held));
            SocketFolder.Remove(hold.ReadToEnd().Trim());
            Directory.Delete(folder, recursive: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // In use, or another user's.
        }
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
