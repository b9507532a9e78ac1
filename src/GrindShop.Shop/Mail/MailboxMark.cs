namespace GrindShop.Shop.Mail;

/// <summary>How far a mailbox has been read, and what came of the last visit. UIDs and their validity are those of RFC 3501, 2.3.1.1.</summary>
public sealed class MailboxMark(string mailbox)
{
    /// <summary>A mail whose fetching breaks so often is put aside, so that the next one gets its turn.</summary>
    public const int MostTries = 3;

    /// <summary>User, server and folder.</summary>
    public string Mailbox { get; private set; } = mailbox;

    /// <summary>UIDs only mean something together with it; 0 before the first visit.</summary>
    public long UidValidity { get; private set; }

    /// <summary>Everything up to here has been taken in or passed over.</summary>
    public long LastUid { get; private set; }

    /// <summary>From here on every mail is taken in; of the older ones only those that were unread.</summary>
    public long NewFrom { get; private set; }

    /// <summary>The mail that is being fetched.</summary>
    public long? TryingUid { get; private set; }

    public int Tries { get; private set; }

    public DateTimeOffset? LookedAt { get; private set; }

    /// <summary>Why the last visit failed; null where it went well.</summary>
    public string? Problem { get; private set; }

    internal bool IsGivenUp(long uid) => TryingUid == uid && Tries >= MostTries;

    /// <summary>The server has numbered its mails anew, or is seen for the first time.</summary>
    internal void Begin(long validity, long uidNext)
    {
        if (UidValidity != validity)
            (UidValidity, LastUid, NewFrom, TryingUid, Tries) = (validity, 0, uidNext, null, 0);
    }

    internal bool Wants(long uid, bool isSeen) => uid > LastUid && (uid >= NewFrom || !isSeen);

    internal void Try(long uid) => (TryingUid, Tries) = (uid, TryingUid == uid ? Tries + 1 : 1);

    internal void ReadTo(long uid) => (LastUid, TryingUid, Tries) = (Math.Max(LastUid, uid), null, 0);

    internal void Looked(DateTimeOffset at, string? problem) => (LookedAt, Problem) = (at, problem is null ? null : MailText.OneLine(problem, OutgoingMail.LongestError));
}
