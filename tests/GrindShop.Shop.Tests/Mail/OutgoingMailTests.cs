using GrindShop.Shop.Mail;
using GrindShop.Shop.Tests.Records;
using MimeKit;

namespace GrindShop.Shop.Tests.Mail;

public class OutgoingMailTests
{
    [Theory]
    [InlineData("una@example.com", true)]
    [InlineData("una.thornquist+cam@mail.example.org", true)]
    [InlineData("", false)]
    [InlineData("una", false)]
    [InlineData("una@", false)]
    [InlineData("una@example.com, other@example.com", false)]
    [InlineData("una@example.com;other@example.com", false)]
    [InlineData("Una <una@example.com>", false)]
    [InlineData("una@example.com\r\nBcc: other@example.com", false)]
    [InlineData("una@example.com\nother@example.com", false)]
    public void One_address_and_nothing_else(string text, bool isAddress) => Assert.Equal(isAddress, OutgoingMail.IsAddress(text));

    [Fact]
    public void Mail_to_no_address_fails_at_once() => Assert.Equal(MailState.Failed, Write(new Letter("Hello", "text"), "una at example").State);

    [Fact]
    public void Nothing_typed_becomes_a_header()
    {
        var mail = Write(new Letter("Order C1\r\nBcc: other@example.com\r\n\r\nText", "text\r\n.\r\nMAIL FROM:<x@example.com>"));

        Assert.Equal("Order C1 Bcc: other@example.com Text", mail.Subject);
        Assert.Equal("text\n.\nMAIL FROM:<x@example.com>", mail.Text);
    }

    [Fact]
    public void Subject_and_text_that_are_too_long_are_cut_and_the_text_says_so()
    {
        var mail = Write(new Letter(new string('s', 5_000), string.Concat(Enumerable.Repeat("\U0001F527", 100_000))));

        Assert.Equal(OutgoingMail.LongestSubject, mail.Subject.Length);
        Assert.InRange(mail.Text.Length, OutgoingMail.LongestText - 2, OutgoingMail.LongestText);
        Assert.EndsWith("keeps]", mail.Text, StringComparison.Ordinal);
        Assert.DoesNotContain('\uFFFD', System.Text.Encoding.UTF8.GetString(System.Text.Encoding.UTF8.GetBytes(mail.Text)));
    }

    /// <summary>RFC 5322, 3.6.4: one "@" between two parts without blanks.</summary>
    [Fact]
    public void Message_id_is_one_and_never_the_same()
    {
        var ids = Enumerable.Range(0, 50).Select(_ => Write(new Letter("s", "t")).MessageId).ToList();

        Assert.Equal(50, ids.Distinct().Count());
        Assert.All(ids, id => Assert.Equal(id, MimeKit.Utils.MimeUtils.ParseMessageId($"<{id}>")));
    }

    [Theory]
    [InlineData(1, .5, 1)]
    [InlineData(2, .5, 2)]
    [InlineData(5, .5, 16)]
    [InlineData(9, .5, 240)]
    [InlineData(11, .5, 240)]
    [InlineData(1, 0, .8)]
    [InlineData(1, 1, 1.2)]
    public void Pauses_double_up_to_four_hours(int attempts, double chance, double minutes) => Assert.Equal(minutes, RetryRule.Pause(attempts, chance)!.Value.TotalMinutes, 6);

    [Fact]
    public void Twelfth_attempt_is_the_last() => Assert.Null(RetryRule.Pause(RetryRule.MostAttempts, .5));

    private static OutgoingMail Write(Letter letter, string to = "una@example.com") => OutgoingMail.Write("C1/1 Received", "C1", to, letter, "grindshop.example", TestShop.Now);
}
