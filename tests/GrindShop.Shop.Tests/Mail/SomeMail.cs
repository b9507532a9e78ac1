namespace GrindShop.Shop.Tests.Mail;

/// <summary>Mails as they come over the wire (RFC 5322).</summary>
internal static class SomeMail
{
    public const string Una = "Una Thornquist <una@example.com>";

    public static string Text(string text, string from = Una, string subject = "A cam", string id = "one@mail.example.com", string headers = "") => $"""
        From: {from}
        To: desk@grindshop.example
        Subject: {subject}
        Message-ID: <{id}>
        Date: Wed, 11 Mar 2026 10:00:00 -0500
        {(headers.Length == 0 ? "X-Plain: yes" : headers)}
        MIME-Version: 1.0
        Content-Type: text/plain; charset=utf-8

        {text}
        """;
}
