using System.Diagnostics;
using System.Runtime.InteropServices;

namespace GrindShop.Shop.Records;

/// <summary>
/// The server's process. It stops with the application however that ends: the kernel interrupts it when the <b>thread</b>
/// that started it ends, so that thread lives as long as the server. A session of its own keeps Ctrl-C from reaching it
/// before the application is done with it.
/// </summary>
internal sealed class PostgresProcess
{
    private const int Interrupt = 2, Quit = 3; // PostgreSQL: fast shutdown, immediate shutdown
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly TaskCompletionSource<int> started = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly TaskCompletionSource exited = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly ProcessStartInfo command;
    private int pid;

    private PostgresProcess(ProcessStartInfo command) => this.command = command;

    public Task Exited => exited.Task;

    /// <summary>Runs <paramref name="server"/> as <paramref name="account"/>, its output appended to <paramref name="log"/>.</summary>
    public static async Task<PostgresProcess> StartAsync(IEnumerable<string> server, ServerAccount account, string log)
    {
        var process = new PostgresProcess(new("/bin/sh",
        [
            "-c", "umask 077; exec \"$@\" </dev/null >>\"$0\" 2>&1", log,
            "setsid", .. account.Prefix, "setpriv", "--pdeathsig", "INT", "--", .. server,
        ])
        { WorkingDirectory = "/", Environment = { ["LC_ALL"] = "C" } });
        new Thread(process.Live) { IsBackground = true, Name = "PostgreSQL" }.Start();
        process.pid = await process.started.Task;
        return process;
    }

    private void Live()
    {
        try
        {
            using var process = Process.Start(command)!;
            started.SetResult(process.Id);
            process.WaitForExit();
            exited.SetResult();
        }
        catch (Exception e)
        {
            started.TrySetException(e);
        }
    }

    public async Task StopAsync()
    {
        if (await EndsAfterAsync(Interrupt)) return;
        await EndsAfterAsync(Quit);
    }

    private async Task<bool> EndsAfterAsync(int signal)
    {
        if (Exited.IsCompleted) return true;
        _ = Kill(pid, signal);
        return await Task.WhenAny(Exited, Task.Delay(Patience)) == Exited;
    }

    [DllImport("libc", EntryPoint = "kill")]
    private static extern int Kill(int pid, int signal);
}
