using MailKit;
using MailKit.Net.Imap;
using MailKit.Search;
using MimeKit;

namespace GrindShop.Shop.Mail;

/// <summary>The shop's mailbox over IMAP. It reads, marks as read or moves; it never deletes.</summary>
public sealed class Mailbox(MailSettings settings)
{
    /// <summary>Mails taken in at one visit.</summary>
    private const int MostAtOnce = 50;

    /// <summary>Larger ones are not fetched.</summary>
    public const int LargestBytes = 10_000_000;

    private const int PatienceMs = 60_000;

    private static readonly ParserOptions Careful = new() { MaxMimeDepth = 40 };

    /// <summary>Hands every unread mail to <paramref name="take"/>, oldest first, and marks it afterwards.</summary>
    public async Task VisitAsync(Func<string, ReadMail, string?, Task> take, CancellationToken cancel)
    {
        var server = settings.Imap ?? throw new InvalidOperationException("No mailbox is set up.");
        using var client = new ImapClient { Timeout = PatienceMs };
        await client.ConnectAsync(server.Host, server.Port, server.Tls, cancel);
        if (server.User is { } user)
            await client.AuthenticateAsync(user, server.Password ?? "", cancel);
        var folder = await client.GetFolderAsync(settings.ImapFolder, cancel);
        await folder.OpenAsync(FolderAccess.ReadWrite, cancel);
        foreach (var uid in (await folder.SearchAsync(SearchQuery.NotSeen, cancel)).Order().Take(MostAtOnce))
            await TakeAsync(client, folder, uid, take, cancel);
        await client.DisconnectAsync(quit: true, cancel);
    }

    private async Task TakeAsync(ImapClient client, IMailFolder folder, UniqueId uid, Func<string, ReadMail, string?, Task> take, CancellationToken cancel)
    {
        var (mail, problem) = await FetchAsync(folder, uid, cancel);
        await take($"imap:{settings.Imap!.Host}/{settings.Imap.User}/{folder.FullName}/{folder.UidValidity}/{uid.Id}", mail, problem);
        await folder.AddFlagsAsync(uid, MessageFlags.Seen, silent: true, cancel);
        if (settings.ImapDoneFolder is { } done)
            await folder.MoveToAsync(uid, await client.GetFolderAsync(done, cancel), cancel);
    }

    /// <summary>A mail that is too large or cannot be read is told with the reason instead.</summary>
    private static async Task<(ReadMail Mail, string? Problem)> FetchAsync(IMailFolder folder, UniqueId uid, CancellationToken cancel)
    {
        var summary = (await folder.FetchAsync([uid], MessageSummaryItems.Size, cancel)).FirstOrDefault();
        if (summary?.Size > LargestBytes)
            return (ReadMail.Unreadable, $"It is larger than {LargestBytes / 1_000_000} MB and was not fetched; it lies in the mailbox.");
        using var stream = await folder.GetStreamAsync(uid, "", cancel);
        return await ReadAsync(stream, cancel);
    }

    /// <summary>Reads a mail from its bytes, whatever they are.</summary>
    public static async Task<(ReadMail Mail, string? Problem)> ReadAsync(Stream bytes, CancellationToken cancel = default)
    {
        try
        {
            return (ReadMail.Of(await MimeMessage.LoadAsync(Careful, bytes, cancel)), null);
        }
        catch (Exception error) when (error is not (OperationCanceledException or IOException or ProtocolException))
        {
            return (ReadMail.Unreadable, $"It cannot be read as a mail: {error.Message}");
        }
    }
}
