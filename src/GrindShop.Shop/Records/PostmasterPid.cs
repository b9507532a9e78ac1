using System.Diagnostics;

namespace GrindShop.Shop.Records;

/// <summary>The file a running server keeps in its cluster; after a crash it may name a process that is gone or another program.</summary>
internal sealed record PostmasterPid(string File)
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(50);

    public bool ServerRuns => Number() is { } pid && IsPostgres(pid);

    /// <summary>
    /// A server whose application has just been killed is still on its way down: wait for it.
    /// A file that names no server is removed, else the server would mistake the number's new owner for one.
    /// </summary>
    /// <returns>False when a server still runs on the folder.</returns>
    public async Task<bool> ClearAsync(CancellationToken cancel)
    {
        var waited = Stopwatch.StartNew();
        while (ServerRuns && waited.Elapsed < Patience) await Task.Delay(Beat, cancel);
        if (ServerRuns) return false;
        System.IO.File.Delete(File);
        return true;
    }

    private int? Number()
    {
        try
        {
            return int.TryParse(System.IO.File.ReadLines(File).FirstOrDefault(), out var pid) && pid > 0 ? pid : null;
        }
        catch (IOException)
        {
            return null;
        }
    }

    private static bool IsPostgres(int pid)
    {
        try
        {
            using var process = Process.GetProcessById(pid);
            return process.ProcessName is "postgres" or "postmaster";
        }
        catch (Exception e) when (e is ArgumentException or InvalidOperationException)
        {
            return false;
        }
    }
}
