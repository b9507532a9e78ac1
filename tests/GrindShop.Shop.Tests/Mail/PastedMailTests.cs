using GrindShop.Shop.Mail;

namespace GrindShop.Shop.Tests.Mail;

public class PastedMailTests
{
    [Fact]
    public void Lines_above_the_text_name_sender_and_subject() => Assert.Equal(
        new PastedMail("una@example.com", "Una Thornquist", "A cam", "230/236\nFrom: here on it is text"),
        PastedMail.Of("\r\nFrom: Una Thornquist <Una@example.com>\r\nSent: Wednesday\r\nTo: desk@grindshop.example\r\nSubject: A cam\r\n\r\n230/236\r\nFrom: here on it is text"));

    [Theory]
    [InlineData("230/236 @.050")]
    [InlineData("To: you\nhello")]
    [InlineData("From: u")]
    [InlineData("From: una@example.com\n")]
    [InlineData("From: una@example.com\nhello")]
    [InlineData("")]
    public void Text_alone_stays_as_it_is(string text) => Assert.Equal(new PastedMail("", "", "", text), PastedMail.Of(text));

    [Fact]
    public void Sender_without_an_address_is_none() => Assert.Equal("", PastedMail.Of("From: Una\n\n230/236").From);
}
