using MailKit;
using MailKit.Net.Smtp;
using MailKit.Security;
using MimeKit;

namespace GrindShop.Shop.Mail;

/// <summary>Hands messages to the mail server, one connection a message.</summary>
public sealed class SmtpCarrier(MailServer server) : IMailCarrier
{
    private const int PatienceMs = 60_000;

    public MailState WhenDone => MailState.Sent;

    public string Via => server.ToString();

    public async Task<CarryResult> CarryAsync(MimeMessage message, CancellationToken cancel)
    {
        using var client = new SmtpClient { Timeout = PatienceMs };
        var flow = new Flow();
        try
        {
            await client.ConnectAsync(server.Host, server.Port, server.Tls, cancel);
            if (server.User is { } user)
                await client.AuthenticateAsync(user, server.Password ?? "", cancel);
            await client.SendAsync(message, cancel, flow);
        }
        catch (SmtpCommandException refused)
        {
            return Refused(refused);
        }
        catch (Exception error) when (IsBroken(error) || error is OperationCanceledException)
        {
            return new CarryResult(flow.HasBegun ? Carried.Unsure : Carried.NotNow, error.Message);
        }
        await LeaveAsync(client, cancel);
        return new CarryResult(Carried.Done);
    }

    /// <summary>The server answered, so it is sure that it did not take the mail. A 5xx to the recipient or the text is its last word; anything else may pass.</summary>
    private static CarryResult Refused(SmtpCommandException refused)
    {
        var code = (int)refused.StatusCode;
        var isLastWord = code >= 500 && refused.ErrorCode is (SmtpErrorCode.RecipientNotAccepted or SmtpErrorCode.MessageNotAccepted);
        return new CarryResult(isLastWord ? Carried.Never : Carried.NotNow, $"The mail server refused: {code} {refused.Message}");
    }

    private static bool IsBroken(Exception error) => error is IOException or System.Net.Sockets.SocketException or TimeoutException
        or SmtpProtocolException or AuthenticationException or SslHandshakeException or NotSupportedException
        or ServiceNotAuthenticatedException or ServiceNotConnectedException;

    /// <summary>The mail is taken; a server that does not say goodbye changes nothing.</summary>
    private static async Task LeaveAsync(SmtpClient client, CancellationToken cancel)
    {
        try
        {
            await client.DisconnectAsync(quit: true, cancel);
        }
        catch (Exception error) when (IsBroken(error) || error is OperationCanceledException)
        {
        }
    }

    private sealed class Flow : ITransferProgress
    {
        public bool HasBegun { get; private set; }

        public void Report(long bytesTransferred, long totalSize) => HasBegun = true;

        public void Report(long bytesTransferred) => HasBegun = true;
    }
}
