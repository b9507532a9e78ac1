using System.Buffers;
using System.Net;
using System.Net.Sockets;
using MailKit.Security;
using MimeKit;
using SmtpServer;
using SmtpServer.ComponentModel;
using SmtpServer.Mail;
using SmtpServer.Protocol;
using SmtpServer.Storage;

namespace GrindShop.Shop.Tests.Mail;

/// <summary>A real SMTP server on this machine. It keeps what it takes and refuses what it is told to.</summary>
internal sealed class MailHost : IAsyncDisposable
{
    private readonly CancellationTokenSource _stop = new();
    private Task _running = Task.CompletedTask;

    public MailHost() => Port = FreePort();

    public int Port { get; }

    public System.Collections.Concurrent.ConcurrentQueue<MimeMessage> Taken { get; } = [];

    /// <summary>What it answers to the text of a message; null takes it.</summary>
    public SmtpResponse? AnswerToText { get; set; }

    /// <summary>What it answers to a recipient; null accepts.</summary>
    public SmtpResponse? AnswerToRecipient { get; set; }

    /// <summary>It takes nothing from somebody who has not signed in.</summary>
    public bool AsksForSignIn { get; set; }

    public GrindShop.Shop.Mail.MailServer Server => new("127.0.0.1", Port, SecureSocketOptions.None, null, null);

    public async Task<MailHost> StartAsync()
    {
        var options = new SmtpServerOptionsBuilder().ServerName("localhost").Endpoint(at => at.Endpoint(new IPEndPoint(IPAddress.Loopback, Port)).AuthenticationRequired(AsksForSignIn)).Build();
        var services = new ServiceProvider();
        services.Add(new Store(this));
        services.Add(new Filter(this));
        _running = new SmtpServer.SmtpServer(options, services).StartAsync(_stop.Token);
        await AnswersAsync(Port);
        return this;
    }

    public async ValueTask DisposeAsync()
    {
        await _stop.CancelAsync();
        await _running.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        _stop.Dispose();
    }

    public static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static async Task AnswersAsync(int port)
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        while (true)
        {
            try
            {
                using var client = new TcpClient();
                await client.ConnectAsync(IPAddress.Loopback, port, patience.Token);
                return;
            }
            catch (SocketException)
            {
                await Task.Yield();
            }
        }
    }

    private sealed class Store(MailHost host) : MessageStore
    {
        public override async Task<SmtpResponse> SaveAsync(ISessionContext context, IMessageTransaction transaction, ReadOnlySequence<byte> buffer, CancellationToken cancel)
        {
            if (host.AnswerToText is { } refusal)
                return refusal;
            host.Taken.Enqueue(await MimeMessage.LoadAsync(new MemoryStream(buffer.ToArray()), cancel));
            return SmtpResponse.Ok;
        }
    }

    private sealed class Filter(MailHost host) : MailboxFilter
    {
        public override Task<bool> CanDeliverToAsync(ISessionContext context, IMailbox to, IMailbox from, CancellationToken cancel) =>
            host.AnswerToRecipient is { } refusal ? throw new SmtpResponseException(refusal) : Task.FromResult(true);
    }
}
