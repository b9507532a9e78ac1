namespace GrindShop.Shop.Mail;

/// <summary>What is to be said to a customer: plain text, and the papers that go with it.</summary>
public sealed record Letter(string Subject, string Text)
{
    /// <summary>Papers to print when it is sent.</summary>
    public IReadOnlyList<string> Papers { get; init; } = [];

    /// <summary>The Message-ID of the mail it answers.</summary>
    public string? InReplyTo { get; init; }
}
