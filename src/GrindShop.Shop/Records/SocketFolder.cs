using System.Security.Cryptography;
using System.Text.RegularExpressions;

namespace GrindShop.Shop.Records;

/// <summary>
/// Where the server's socket lies: a folder that only the server's account (and root) may enter. It is under /tmp because a
/// socket's path is limited to about 100 characters. The lock file names it, for backups and for tidying up after a crash.
/// </summary>
public static partial class SocketFolder
{
    internal static async Task<string> MakeAsync(PostgresCluster cluster, ServerAccount account, CancellationToken cancel)
    {
        Remove(await cluster.ReadNoteAsync(cancel));
        var folder = $"/tmp/grindshop-{RandomNumberGenerator.GetHexString(16, lowercase: true)}";
        PostgresCluster.Make(folder, PostgresCluster.Private);
        await account.TakeOverAsync(folder, cancel);
        await cluster.WriteNoteAsync(folder, cancel);
        return folder;
    }

    /// <summary>Removes a socket folder of a server that has ended; any other path is left alone.</summary>
    public static void Remove(string folder)
    {
        if (OwnName().IsMatch(folder) && Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
    }

    [GeneratedRegex(@"\A/tmp/grindshop-[0-9a-f]{16}\z")]
    private static partial Regex OwnName();
}
