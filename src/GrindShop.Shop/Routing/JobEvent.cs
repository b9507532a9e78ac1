namespace GrindShop.Shop.Routing;

/// <summary>One line of a job's history: who, when, what, why. Lines are only ever added.</summary>
public sealed class JobEvent(string what, Stage? stage, string by, DateTimeOffset at, string why, string? commandKey)
{
    public long Id { get; private set; }

    public int JobId { get; private set; }

    public string What { get; private set; } = what;

    public Stage? Stage { get; private set; } = stage;

    public string By { get; private set; } = by;

    public DateTimeOffset At { get; private set; } = at;

    public string Why { get; private set; } = why;

    /// <summary>The tablet's own key for the command; unique, so that a repeated command is known.</summary>
    public string? CommandKey { get; private set; } = commandKey;
}
