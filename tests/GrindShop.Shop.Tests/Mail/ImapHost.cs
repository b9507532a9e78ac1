using System.Collections.Concurrent;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.RegularExpressions;
using MailKit.Security;

namespace GrindShop.Shop.Tests.Mail;

/// <summary>One mail that lies on the server.</summary>
internal sealed record LyingMail(uint Uid, byte[] Bytes)
{
    public bool Seen { get; set; }

    /// <summary>Length that the server claims; its own where null.</summary>
    public long? Claims { get; set; }

    /// <summary>How often fetching it still breaks off in the middle.</summary>
    public int Breaks { get; set; }
}

/// <summary>A mailbox on a socket of this machine that speaks as much of IMAP4rev1 (RFC 3501) as a client needs to read one folder.</summary>
internal sealed partial class ImapHost : IAsyncDisposable
{
    public const string User = "desk", Password = "right \"one\"";

    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource _stop = new();
    private readonly Task _running;

    public ImapHost()
    {
        _listener.Start();
        _running = AcceptAsync();
    }

    public uint Validity { get; set; } = 7;

    public List<LyingMail> Mails { get; } = [];

    /// <summary>What clients said, without their tags.</summary>
    public ConcurrentQueue<string> Heard { get; } = [];

    /// <summary>Marking is refused, as in a mailbox that may only be read.</summary>
    public bool IsReadOnly { get; set; }

    public int Visits { get; private set; }

    /// <summary>A visitor waits here after signing in; null: nobody does.</summary>
    public TaskCompletionSource? Hold { get; set; }

    public TaskCompletionSource SignedIn { get; } = new();

    public GrindShop.Shop.Mail.MailServer Server => new("127.0.0.1", ((IPEndPoint)_listener.LocalEndpoint).Port, SecureSocketOptions.None, User, Password);

    public LyingMail Put(string mail, bool seen = false) => Put(Encoding.UTF8.GetBytes(mail.ReplaceLineEndings("\r\n")), seen);

    public LyingMail Put(byte[] bytes, bool seen = false)
    {
        var mail = new LyingMail((Mails.Count == 0 ? 0 : Mails[^1].Uid) + 1, bytes) { Seen = seen };
        Mails.Add(mail);
        return mail;
    }

    public async ValueTask DisposeAsync()
    {
        await _stop.CancelAsync();
        _listener.Dispose();
        await _running.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        _stop.Dispose();
    }

    private async Task AcceptAsync()
    {
        var visits = new List<Task>();
        try
        {
            while (true)
                visits.Add(ServeAsync(await _listener.AcceptTcpClientAsync(_stop.Token)));
        }
        finally
        {
            await Task.WhenAll(visits).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }
    }

    private async Task ServeAsync(TcpClient client)
    {
        using var visitor = client;
        await using var stream = client.GetStream();
        using var reader = new StreamReader(stream, Encoding.Latin1);
        Visits++;
        await SayAsync(stream, "* OK ready");
        while (await reader.ReadLineAsync(_stop.Token) is { } line)
        {
            var (tag, said) = (line.Split(' ')[0], line[(line.IndexOf(' ', StringComparison.Ordinal) + 1)..]);
            Heard.Enqueue(said);
            if (!await AnswerAsync(stream, tag, said))
                return;
        }
    }

    /// <summary>False where the line is dropped.</summary>
    private async Task<bool> AnswerAsync(Stream stream, string tag, string said)
    {
        switch (said.Split(' ')[0].ToUpperInvariant())
        {
            case "CAPABILITY":
                await SayAsync(stream, "* CAPABILITY IMAP4rev1");
                break;
            case "LOGIN" when said != $"LOGIN {User} \"{Password.Replace("\"", "\\\"", StringComparison.Ordinal)}\"":
                await SayAsync(stream, $"{tag} NO [AUTHENTICATIONFAILED] wrong user or password");
                return true;
            case "LOGIN":
                SignedIn.TrySetResult();
                await (Hold?.Task ?? Task.CompletedTask);
                break;
            case "LIST":
                await SayAsync(stream, said.EndsWith("\"\"", StringComparison.Ordinal) ? "* LIST (\\Noselect) \"/\" \"\"" : "* LIST () \"/\" INBOX");
                break;
            case "SELECT":
                await SelectAsync(stream);
                await SayAsync(stream, $"{tag} OK [READ-WRITE] done");
                return true;
            case "UID":
                return await UidAsync(stream, tag, said);
            case "LOGOUT":
                await SayAsync(stream, "* BYE", $"{tag} OK done");
                return false;
        }
        await SayAsync(stream, $"{tag} OK done");
        return true;
    }

    private Task SelectAsync(Stream stream) => SayAsync(stream,
        $"* {Mails.Count} EXISTS", "* 0 RECENT", "* FLAGS (\\Seen)", "* OK [PERMANENTFLAGS (\\Seen)] kept",
        $"* OK [UIDVALIDITY {Validity}] one", $"* OK [UIDNEXT {(Mails.Count == 0 ? 1 : Mails[^1].Uid + 1)}] next");

    private async Task<bool> UidAsync(Stream stream, string tag, string said)
    {
        var range = Range().Match(said);
        var first = uint.Parse(range.Groups["first"].Value, CultureInfo.InvariantCulture);
        foreach (var mail in Named(first, range.Groups["last"]))
            if (!await OneAsync(stream, mail, said))
                return false;
        await SayAsync(stream, said.Contains("STORE", StringComparison.Ordinal) && IsReadOnly ? $"{tag} NO may only be read" : $"{tag} OK done");
        return true;
    }

    /// <summary>"*" is the last mail, whatever its number: a range up to it always holds it.</summary>
    private IEnumerable<LyingMail> Named(uint first, Group last) =>
        Mails.Where((mail, place) => last.Success ? mail.Uid >= first || (last.Value == "*" && place == Mails.Count - 1) : mail.Uid == first);

    private async Task<bool> OneAsync(Stream stream, LyingMail mail, string said)
    {
        var place = Mails.IndexOf(mail) + 1;
        if (said.Contains("STORE", StringComparison.Ordinal))
            mail.Seen |= !IsReadOnly;
        else if (!said.Contains("BODY.PEEK[]", StringComparison.Ordinal))
            await SayAsync(stream, $"* {place} FETCH (UID {mail.Uid} FLAGS ({(mail.Seen ? "\\Seen" : "")}) RFC822.SIZE {mail.Claims ?? mail.Bytes.Length})");
        else
            return await GiveAsync(stream, place, mail);
        return true;
    }

    private static async Task<bool> GiveAsync(Stream stream, int place, LyingMail mail)
    {
        await SayAsync(stream, $"* {place} FETCH (UID {mail.Uid} BODY[] {{{mail.Bytes.Length}}}");
        if (mail.Breaks-- > 0)
        {
            await stream.WriteAsync(mail.Bytes.AsMemory(0, mail.Bytes.Length / 2));
            return false;
        }
        await stream.WriteAsync(mail.Bytes);
        await SayAsync(stream, ")");
        return true;
    }

    private static async Task SayAsync(Stream stream, params string[] lines) => await stream.WriteAsync(Encoding.Latin1.GetBytes(string.Concat(lines.Select(line => $"{line}\r\n"))));

    [GeneratedRegex(@"^UID \w+ (?<first>\d+)(:(?<last>\*|\d+))? ")]
    private static partial Regex Range();
}
