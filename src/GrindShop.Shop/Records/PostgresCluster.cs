using System.Text;

namespace GrindShop.Shop.Records;

/// <summary>The cluster's folder on disk, held by a lock for as long as an instance of the application uses it.</summary>
internal sealed class PostgresCluster : IDisposable
{
    private const int WouldBlockLinux = 11, WouldBlockMac = 35;
    internal const UnixFileMode Private = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
    private const UnixFileMode Enterable = Private | UnixFileMode.GroupExecute | UnixFileMode.OtherExecute;

    private readonly FileStream hold;

    private PostgresCluster(string dataFolder, FileStream hold) => (DataFolder, this.hold) = (dataFolder, hold);

    public string DataFolder { get; }
    public string Folder => Path.Combine(DataFolder, "postgres");
    public string Log => Path.Combine(DataFolder, "postgres.log");
    public PostmasterPid Pid => new(Path.Combine(Folder, "postmaster.pid"));
    private string Unfinished => Folder + ".new";

    public static PostgresCluster Open(string dataFolder)
    {
        var folder = Path.GetFullPath(dataFolder);
        try
        {
            if (!Directory.Exists(folder)) Make(folder, Enterable);
            return new(folder, new(Path.Combine(folder, "postgres.lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
        }
        catch (IOException e) when (e.HResult is WouldBlockLinux or WouldBlockMac)
        {
            throw InUse(folder);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new PrivatePostgresException(PostgresFailure.NotWritable, $"The data folder {folder} is not writable: {e.Message}");
        }
    }

    public static void Make(string folder, UnixFileMode mode)
    {
        if (OperatingSystem.IsWindows())
            throw new PrivatePostgresException(PostgresFailure.NoBinaries, "The private PostgreSQL needs Linux: set ConnectionStrings__Shop to a server.");
        Directory.CreateDirectory(folder, mode);
    }

    public static PrivatePostgresException InUse(string folder) => new(PostgresFailure.InUse,
        $"The data folder {folder} is in use by another running instance: stop that one, or set {PrivatePostgresOptions.DataSetting} to another folder.");

    /// <summary>The major version that made the kept data; null when there is none yet.</summary>
    public int? KeptMajor()
    {
        var file = Path.Combine(Folder, "PG_VERSION");
        if (IsVacant()) return null;
        if (File.Exists(file) && int.TryParse(File.ReadAllText(file), out var major)) return major;
        throw new PrivatePostgresException(PostgresFailure.Broken,
            $"{Folder} holds files but no readable PG_VERSION, so it is not a PostgreSQL cluster: move it away or restore it from a backup.");
    }

    private bool IsVacant() => !Path.Exists(Folder) || Directory.Exists(Folder) && !Directory.EnumerateFileSystemEntries(Folder).Any();

    /// <summary>Made beside its place and renamed when whole, so that an interrupted start leaves no half cluster.</summary>
    public async Task CreateAsync(PostgresBinaries binaries, ServerAccount account, bool durable, CancellationToken cancel)
    {
        if (Directory.Exists(Unfinished)) Directory.Delete(Unfinished, recursive: true);
        Make(Unfinished, Private);
        await account.TakeOverAsync(Unfinished, cancel);
        var made = await Command.RunAsync([.. account.Prefix, .. InitdbWords(binaries, durable)], cancel);
        if (!made.Ok)
            throw new PrivatePostgresException(PostgresFailure.Broken, $"initdb could not make {Folder}: {made.LastLine}");
        if (Directory.Exists(Folder)) Directory.Delete(Folder);
        Directory.Move(Unfinished, Folder);
    }

    // Trust is safe here: the only way in is a socket in a folder closed to other users.
    private IEnumerable<string> InitdbWords(PostgresBinaries binaries, bool durable) =>
    [
        binaries.Initdb, "-D", Unfinished, "-U", PrivatePostgres.User, "--auth-local=trust", "--auth-host=reject",
        "--encoding=UTF8", "--locale=C.UTF-8", "--data-checksums", .. durable ? Array.Empty<string>() : ["--no-sync"],
    ];

    /// <summary>What the last holder of the lock wrote into it.</summary>
    public async Task<string> ReadNoteAsync(CancellationToken cancel)
    {
        hold.Position = 0;
        using var reader = new StreamReader(hold, leaveOpen: true);
        return (await reader.ReadToEndAsync(cancel)).Trim();
    }

    public async Task WriteNoteAsync(string line, CancellationToken cancel)
    {
        hold.SetLength(0);
        await hold.WriteAsync(Encoding.UTF8.GetBytes(line + '\n'), cancel);
        await hold.FlushAsync(cancel);
    }

    public void Dispose() => hold.Dispose();
}
