using GrindShop.Shop.Mail;
using MailKit.Security;
using Microsoft.Extensions.Configuration;

namespace GrindShop.Shop.Tests.Mail;

public class MailSettingsTests
{
    [Fact]
    public void Without_settings_nothing_is_sent_or_read()
    {
        var settings = From([]);

        Assert.Null(settings.Smtp);
        Assert.Null(settings.Imap);
    }

    /// <summary>RFC 8314, 3.3: IMAP over TLS from the first byte has port 993.</summary>
    [Fact]
    public void Mailbox_is_read_encrypted_unless_somebody_says_otherwise()
    {
        var usual = From(new() { ["GRINDSHOP_IMAP_HOST"] = "mail.example.com", ["GRINDSHOP_IMAP_USER"] = "desk", ["GRINDSHOP_IMAP_PASSWORD"] = " kept as it is " });
        Assert.Equal(new MailServer("mail.example.com", 993, SecureSocketOptions.SslOnConnect, "desk", " kept as it is "), usual.Imap);
        Assert.Equal(("INBOX", TimeSpan.FromMinutes(1)), (usual.ImapFolder, usual.ImapEvery));

        var other = From(new() { ["GRINDSHOP_IMAP_HOST"] = "mail.example.com", ["GRINDSHOP_IMAP_PORT"] = "143", ["GRINDSHOP_IMAP_FOLDER"] = "Cams", ["GRINDSHOP_IMAP_SECONDS"] = "5" });
        Assert.Equal((SecureSocketOptions.StartTls, "Cams", TimeSpan.FromSeconds(5)), (other.Imap!.Tls, other.ImapFolder, other.ImapEvery));
    }

    [Theory]
    [InlineData("GRINDSHOP_IMAP_PORT", "0")]
    [InlineData("GRINDSHOP_IMAP_TLS", "maybe")]
    [InlineData("GRINDSHOP_IMAP_SECONDS", "1")]
    public void Setting_that_makes_no_sense_is_named(string name, string value)
    {
        var error = Assert.Throws<MailSettingsException>(() => From(new() { ["GRINDSHOP_IMAP_HOST"] = "mail.example.com", [name] = value }));

        Assert.Contains(name, error.Message, StringComparison.Ordinal);
    }

    private static MailSettings From(Dictionary<string, string?> settings) => MailSettings.From(new ConfigurationBuilder().AddInMemoryCollection(settings).Build(), "http://127.0.0.1:5080");
}
