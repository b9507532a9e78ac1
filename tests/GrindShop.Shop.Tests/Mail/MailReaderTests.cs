using System.Text;
using GrindShop.Shop.Mail;

namespace GrindShop.Shop.Tests.Mail;

/// <summary>Mails of any make, and mails made to break their reader.</summary>
public class MailReaderTests
{
    [Fact]
    public void Plain_mail_is_read_as_it_stands()
    {
        var mail = Read(SomeMail.Text("Can you make 230/236?\n\nThanks", headers: "In-Reply-To: <ours@grindshop.example>\nReferences: <first@grindshop.example> <ours@grindshop.example>"));

        Assert.Equal(("una@example.com", "Una Thornquist", "A cam", "Can you make 230/236?\n\nThanks"), (mail.From, mail.FromName, mail.Subject, mail.Text));
        Assert.Equal("one@mail.example.com", mail.MessageId);
        Assert.Equal(["first@grindshop.example", "ours@grindshop.example"], mail.Answers);
        Assert.False(mail.IsAutomatic);
    }

    /// <summary>RFC 2047: the two examples of its section 8 that name a person.</summary>
    [Theory]
    [InlineData("=?ISO-8859-1?Q?Patrik_F=E4ltstr=F6m?= <paf@example.com>", "Patrik Fältström")]
    [InlineData("=?ISO-8859-1?Q?Keld_J=F8rn_Simonsen?= <keld@example.com>", "Keld Jørn Simonsen")]
    public void Encoded_names_are_read(string from, string name) => Assert.Equal(name, Read(SomeMail.Text("x", from)).FromName);

    [Fact]
    public void Html_becomes_the_words_that_are_shown()
    {
        var mail = Read("From: una@example.com\nMIME-Version: 1.0\nContent-Type: text/html; charset=utf-8\n\n"
            + "<html><head><title>t</title><style>p{}</style></head><body><p>Intake 230 &amp; exhaust <b>236</b><br>112 LSA</p><script>alert(1)</script><img src=x onerror=alert(2)><table><tr><td>lift</td><td>.355</td></tr></table></body></html>");

        Assert.Equal("Intake 230 & exhaust 236\n112 LSA\nlift .355", mail.Text);
    }

    [Fact]
    public void Of_two_forms_the_plain_one_is_read()
    {
        var mail = Read("From: una@example.com\nMIME-Version: 1.0\nContent-Type: multipart/alternative; boundary=b\n\n--b\nContent-Type: text/plain\n\nplain\n--b\nContent-Type: text/html\n\n<p>html</p>\n--b--\n");

        Assert.Equal("plain", mail.Text);
    }

    [Fact]
    public void Files_are_listed_by_name_and_decoded_size()
    {
        var mail = Read($"From: una@example.com\nMIME-Version: 1.0\nContent-Type: multipart/mixed; boundary=b\n\n--b\nContent-Type: text/plain\n\nsee the file\n"
            + $"--b\nContent-Type: text/csv; name=\"../../lobe.csv\"\nContent-Disposition: attachment; filename=\"../../lobe.csv\"\nContent-Transfer-Encoding: base64\n\n{Convert.ToBase64String(new byte[300])}\n--b--\n");

        Assert.Equal(new MailAttachment("../../lobe.csv", "text/csv", 300), Assert.Single(mail.Attachments));
        Assert.Equal("see the file", mail.Text);
    }

    /// <summary>RFC 3834, 5: anything but "no" was written by a machine; RFC 3464: delivery reports; RFC 2076, 3.9: Precedence.</summary>
    [Theory]
    [InlineData("Auto-Submitted: auto-replied", true)]
    [InlineData("Auto-Submitted: auto-generated (by rule)", true)]
    [InlineData("Auto-Submitted: no", false)]
    [InlineData("Precedence: bulk", true)]
    [InlineData("Precedence: first-class", false)]
    [InlineData("Return-Path: <>", true)]
    [InlineData("Return-Path: <una@example.com>", false)]
    public void Machines_are_known_by_their_headers(string header, bool isAutomatic) => Assert.Equal(isAutomatic, Read(SomeMail.Text("x", headers: header)).IsAutomatic);

    [Fact]
    public void Delivery_report_is_a_machines() => Assert.True(Read(
        "From: mail system <system@example.net>\nMIME-Version: 1.0\nContent-Type: multipart/report; report-type=delivery-status; boundary=b\n\n--b\n\nYour mail could not be delivered.\n--b\nContent-Type: message/delivery-status\n\nReporting-MTA: dns; x\n\n--b--\n").IsAutomatic);

    [Fact]
    public void Unknown_charset_and_broken_bytes_do_no_harm()
    {
        var bytes = Encoding.Latin1.GetBytes("From: una@example.com\nMIME-Version: 1.0\nContent-Type: text/plain; charset=no-such-thing\n\nM\xFCller \xFF\xFE\x80 230/236\n");

        Assert.Contains("230/236", MailReader.Read("x", bytes).Mail.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Nul_bytes_are_blanks() => Assert.Equal(("a b", "x y"), Read(SomeMail.Text("x\0y", subject: "a\0b")) is var mail ? (mail.Subject, mail.Text) : default);

    [Fact]
    public void Wrong_base64_is_read_as_far_as_it_goes()
    {
        var mail = Read("From: una@example.com\nMIME-Version: 1.0\nContent-Type: text/plain\nContent-Transfer-Encoding: base64\n\nMjMwL!!!zIzNg==%%%\n");

        Assert.StartsWith("230/", mail.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_within_parts_a_thousand_deep_are_opened_only_so_far()
    {
        var deep = new StringBuilder("From: una@example.com\nSubject: deep\nMIME-Version: 1.0\n");
        for (var level = 0; level < 1_000; level++)
            deep.Append("Content-Type: multipart/mixed; boundary=b").Append(level).Append("\n\n--b").Append(level).Append('\n');
        deep.Append("Content-Type: text/plain\n\nat the bottom\n");

        Assert.Equal(("una@example.com", "deep"), (Read(deep.ToString()).From, Read(deep.ToString()).Subject));
    }

    [Fact]
    public void Header_of_ten_megabytes_is_cut() =>
        Assert.Equal(OutgoingMail.LongestSubject, Read(SomeMail.Text("x", subject: string.Concat(Enumerable.Repeat("=?utf-8?q?abcdefghij?= ", 450_000)))).Subject.Length);

    [Fact]
    public void Ten_thousand_addresses_and_references_are_no_more_than_one_sender_and_a_hundred_answers()
    {
        var mail = Read(SomeMail.Text("x", string.Join(", ", Enumerable.Range(0, 10_000).Select(i => $"p{i}@example.com")), headers: $"References: {string.Join("\n ", Enumerable.Range(0, 10_000).Select(i => $"<{i}@example.com>"))}"));

        Assert.Equal(("p0@example.com", 100), (mail.From, mail.Answers.Count));
    }

    [Theory]
    [InlineData("")]
    [InlineData("nonsense")]
    [InlineData("From:\n\nhello")]
    [InlineData("From: \"nobody\" <>\n\nhello")]
    [InlineData("From: undisclosed:;\n\nhello")]
    public void Without_a_sender_there_is_nobody_to_answer(string mail) => Assert.Equal("", Read(mail).From);

    [Theory]
    [InlineData("<a b@example.com>")]
    [InlineData("<>")]
    [InlineData("no brackets at all and blanks")]
    public void Message_id_that_may_not_stand_in_a_header_is_none(string id)
    {
        var read = Read($"From: una@example.com\nMessage-ID: {id}\n\nx").MessageId;

        Assert.True(read is null || MimeKit.Utils.MimeUtils.ParseMessageId($"<{read}>") == read);
    }

    [Fact]
    public void Any_bytes_at_all_are_read_without_breaking()
    {
        var chance = new Random(20260311);
        var whole = Encoding.UTF8.GetBytes(SomeMail.Text("Can you make 230/236?", headers: "Content-Disposition: attachment; filename=x"));
        for (var round = 0; round < 400; round++)
        {
            var bytes = whole.ToArray();
            for (var hit = 0; hit < 12; hit++)
                bytes[chance.Next(bytes.Length)] = (byte)chance.Next(256);
            Assert.DoesNotContain('\0', MailReader.Read("x", bytes).Mail.Text);
        }
    }

    [Fact]
    public void Own_words_are_without_what_is_quoted_and_without_the_signature() =>
        Assert.Equal("It is 1.6.\nThanks", OwnWordsOf("It is 1.6.\n> What ratio?\n>> deeper\nThanks\n-- \nUna\nPhone"));

    [Fact]
    public void Mail_that_only_quotes_keeps_its_text() => Assert.Equal("> 230/236", OwnWordsOf("> 230/236\n"));

    /// <summary>How mail programs mark what stands below (common practice, no source).</summary>
    [Theory]
    [InlineData("I accept.\n\n-----Original Message-----\nFrom: Shop\nWhat ratio?")]
    [InlineData("I accept.\n\nOn Tue, Mar 10, 2026 at 3:04 PM Shop wrote:\n\nWhat ratio?")]
    [InlineData("I accept.\n\nFrom: Shop <shop@example.com>\nSent: Tuesday\nWhat ratio?")]
    [InlineData("I accept.\r\n\r\n*From:* Shop\r\n*Date:* Tuesday\r\nWhat ratio?")]
    [InlineData("On Tue, Mar 10, 2026 Shop wrote:\n> What ratio?\nI accept.")]
    public void Own_words_end_where_an_earlier_mail_begins(string text) => Assert.Equal("I accept.", OwnWordsOf(text));

    [Theory]
    [InlineData("-----Original Message-----\nFrom: Shop\n230/236")]
    [InlineData("From: a friend\nof mine: 230/236")]
    [InlineData("On my engine 230/236 wrote: nothing off")]
    public void Words_are_never_all_dropped_nor_ended_by_what_only_looks_alike(string text) => Assert.Equal(text, OwnWordsOf(text));

    private static string OwnWordsOf(string text) => GrindShop.Shop.Orders.OwnWords.Of(text);

    private static ReadMail Read(string mail) => MailReader.Read("x", Encoding.UTF8.GetBytes(mail)).Mail;
}
