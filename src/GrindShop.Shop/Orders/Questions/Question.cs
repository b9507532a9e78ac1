namespace GrindShop.Shop.Orders;

/// <summary>What the desk wants to ask.</summary>
/// <param name="Cam">The cam it is about, by its place in the order.</param>
/// <param name="Field">Path of the field it is about, as in the JSON; null where it is about something else.</param>
public sealed record QuestionEntry(int Cam, string? Field, string Text);

/// <summary>Something the customer was asked. Questions and answers are only ever added.</summary>
public sealed class Question(int cam, string? field, string text, string by, DateTimeOffset at, string commandKey)
{
    public const int LongestText = 600;

    private readonly List<Reply> _replies = [];

    public int Id { get; private set; }

    public int OrderId { get; private set; }

    public int Cam { get; private set; } = cam;

    public string? Field { get; private set; } = field;

    public string Text { get; private set; } = text;

    public string By { get; private set; } = by;

    public DateTimeOffset At { get; private set; } = at;

    /// <summary>The desk's own key for the sending; questions sent together share it.</summary>
    public string CommandKey { get; private set; } = commandKey;

    /// <summary>What the customer said to it, oldest first; the last one counts.</summary>
    public IReadOnlyList<Reply> Replies => [.. _replies.OrderBy(reply => reply.At).ThenBy(reply => reply.Id)];

    public Reply? LastReply => Replies.Count == 0 ? null : Replies[^1];

    internal void Add(Reply reply) => _replies.Add(reply);
}

/// <summary>What the customer says to one question.</summary>
/// <param name="QuestionId">Which one.</param>
/// <param name="Value">The field's value as text, where the question is about a field and the customer gave one.</param>
/// <param name="Words">Anything else.</param>
public sealed record ReplyEntry(int QuestionId, string? Value, string? Words)
{
    public bool IsBlank => string.IsNullOrWhiteSpace(Value) && string.IsNullOrWhiteSpace(Words);
}

/// <summary>An answer of the customer's, as it was given.</summary>
public sealed class Reply(string? value, string? words, string by, DateTimeOffset at, string commandKey)
{
    public const int LongestValue = 200, LongestWords = 2000;

    public int Id { get; private set; }

    public int QuestionId { get; private set; }

    public string? Value { get; private set; } = value;

    public string? Words { get; private set; } = words;

    public string By { get; private set; } = by;

    public DateTimeOffset At { get; private set; } = at;

    public string CommandKey { get; private set; } = commandKey;
}
