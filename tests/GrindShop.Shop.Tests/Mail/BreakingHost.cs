using System.Net;
using System.Net.Sockets;
using MailKit.Security;

namespace GrindShop.Shop.Tests.Mail;

/// <summary>A mail server that reads a whole message and then drops the line without a word.</summary>
internal sealed class BreakingHost : IDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);

    public BreakingHost()
    {
        _listener.Start();
        Served = ServeAsync();
    }

    public Task Served { get; }

    public GrindShop.Shop.Mail.MailServer Server => new("127.0.0.1", ((IPEndPoint)_listener.LocalEndpoint).Port, SecureSocketOptions.None, null, null);

    public void Dispose() => _listener.Dispose();

    private async Task ServeAsync()
    {
        using var client = await _listener.AcceptTcpClientAsync();
        using var reader = new StreamReader(client.GetStream());
        await using var writer = new StreamWriter(client.GetStream()) { NewLine = "\r\n", AutoFlush = true };
        await writer.WriteLineAsync("220 localhost");
        while (await reader.ReadLineAsync() is { } line && line != ".")
            if (line.StartsWith("DATA", StringComparison.Ordinal))
                await writer.WriteLineAsync("354 go on");
            else if (line.StartsWith("EHLO", StringComparison.Ordinal) || line.StartsWith("MAIL", StringComparison.Ordinal) || line.StartsWith("RCPT", StringComparison.Ordinal))
                await writer.WriteLineAsync("250 ok");
    }
}
