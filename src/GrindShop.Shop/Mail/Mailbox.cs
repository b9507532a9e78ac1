using MailKit;
using MailKit.Net.Imap;

namespace GrindShop.Shop.Mail;

/// <summary>The shop's mailbox over IMAP. It reads and marks as read; it never moves or deletes.</summary>
public sealed class Mailbox(MailSettings settings)
{
    /// <summary>Larger mails are not fetched.</summary>
    public const int LargestBytes = 10_000_000;

    /// <summary>For connecting and for each mail.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private MailServer Server => settings.Imap ?? throw new InvalidOperationException("No mailbox is set up.");

    public string Name => $"{Server.User}@{Server}/{settings.ImapFolder}";

    /// <summary>Hands every new mail to <paramref name="take"/>, oldest first, and notes with <paramref name="keep"/> how far it came.</summary>
    public async Task VisitAsync(MailboxMark mark, Func<Task> keep, Func<ArrivedMail, Task> take, CancellationToken cancel)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        patience.CancelAfter(Patience);
        using var client = new ImapClient();
        var folder = await OpenAsync(client, patience.Token);
        mark.Begin(folder.UidValidity, folder.UidNext?.Id ?? uint.MaxValue);
        foreach (var summary in await NewAsync(folder, mark, patience.Token))
        {
            patience.CancelAfter(Patience);
            if (mark.Wants(summary.UniqueId.Id, summary.Flags?.HasFlag(MessageFlags.Seen) == true))
                await TakeAsync(folder, summary, mark, keep, take, patience.Token);
            mark.ReadTo(summary.UniqueId.Id);
            await keep();
        }
        await client.DisconnectAsync(quit: true, patience.Token);
    }

    private async Task<IMailFolder> OpenAsync(ImapClient client, CancellationToken cancel)
    {
        await client.ConnectAsync(Server.Host, Server.Port, Server.Tls, cancel);
        if (Server.User is { } user)
            await client.AuthenticateAsync(user, Server.Password ?? "", cancel);
        var folder = await client.GetFolderAsync(settings.ImapFolder, cancel);
        await folder.OpenAsync(FolderAccess.ReadWrite, cancel);
        return folder;
    }

    /// <summary>The last mail is listed even where it is not new (RFC 3501, 6.4.8), hence the second look at the number.</summary>
    private static async Task<IEnumerable<IMessageSummary>> NewAsync(IMailFolder folder, MailboxMark mark, CancellationToken cancel)
    {
        if (folder.Count == 0)
            return [];
        var range = new UniqueIdRange(new UniqueId((uint)mark.LastUid + 1), UniqueId.MaxValue);
        var found = await folder.FetchAsync(range, MessageSummaryItems.UniqueId | MessageSummaryItems.Flags | MessageSummaryItems.Size, cancel);
        return found.Where(summary => summary.UniqueId.Id > mark.LastUid).OrderBy(summary => summary.UniqueId.Id);
    }

    private async Task TakeAsync(IMailFolder folder, IMessageSummary summary, MailboxMark mark, Func<Task> keep, Func<ArrivedMail, Task> take, CancellationToken cancel)
    {
        var uid = summary.UniqueId;
        var source = $"imap:{Name}/{folder.UidValidity}/{uid.Id}";
        if (mark.IsGivenUp(uid.Id))
        {
            await take(new ArrivedMail(source, ReadMail.Unreadable, null, $"Taking it in broke off {MailboxMark.MostTries} times; it lies in the mailbox."));
            return;
        }
        mark.Try(uid.Id);
        await keep();
        await take(await FetchAsync(folder, summary, source, cancel));
        await MarkReadAsync(folder, uid, cancel);
    }

    /// <summary>A mail that is too large or cannot be read is told with the reason instead.</summary>
    private static async Task<ArrivedMail> FetchAsync(IMailFolder folder, IMessageSummary summary, string source, CancellationToken cancel)
    {
        if (summary.Size > LargestBytes)
            return new ArrivedMail(source, ReadMail.Unreadable, null, $"It is larger than {LargestBytes / 1_000_000} MB and was not fetched; it lies in the mailbox.");
        await using var stream = await folder.GetStreamAsync(summary.UniqueId, "", cancel);
        using var bytes = new MemoryStream();
        await stream.CopyToAsync(bytes, cancel);
        return MailReader.Read(source, bytes.ToArray());
    }

    /// <summary>For the eyes of people who look into the mailbox; where it may not be marked, the shop knows all the same.</summary>
    private static async Task MarkReadAsync(IMailFolder folder, UniqueId uid, CancellationToken cancel)
    {
        try
        {
            await folder.AddFlagsAsync(uid, MessageFlags.Seen, silent: true, cancel);
        }
        catch (ImapCommandException)
        {
        }
    }
}
