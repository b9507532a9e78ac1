using System.ComponentModel;
using System.Diagnostics;

namespace GrindShop.Shop.Records;

/// <summary>A short command run to its end.</summary>
internal sealed record Command(int ExitCode, string Output, string Error)
{
    private const int NotFound = 127;

    public bool Ok => ExitCode == 0;

    public string LastLine => Error.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).LastOrDefault("");

    public static async Task<Command> RunAsync(IEnumerable<string> words, CancellationToken cancel)
    {
        try
        {
            using var process = Process.Start(Describe(words))!;
            return await FinishAsync(process, cancel);
        }
        catch (Win32Exception e)
        {
            return new(NotFound, "", e.Message);
        }
    }

    private static ProcessStartInfo Describe(IEnumerable<string> words) => new(words.First(), words.Skip(1))
    {
        RedirectStandardInput = true,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
        WorkingDirectory = "/",
        Environment = { ["LC_ALL"] = "C" },
    };

    private static async Task<Command> FinishAsync(Process process, CancellationToken cancel)
    {
        process.StandardInput.Close();
        var output = process.StandardOutput.ReadToEndAsync(cancel);
        var error = process.StandardError.ReadToEndAsync(cancel);
        await process.WaitForExitAsync(cancel);
        return new(process.ExitCode, await output, await error);
    }
}
