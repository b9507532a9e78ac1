using GrindShop.Shop.Mail;

namespace GrindShop.Shop.Tests.Mail;

/// <summary>The words of HTML mails.</summary>
public class HtmlTextTests
{
    /// <summary>The end tag of head may be left out: HTML Living Standard, 13.1.2.4 "Optional tags" (from memory).</summary>
    [Theory]
    [InlineData("<html><head><meta charset=utf-8><body>230 @.050</html>")]
    [InlineData("<html><head><title>Mail</title></head><body><p>230 @.050</p></body></html>")]
    [InlineData("<style>p { color: red }</style><div>230 @.050<script>alert(1)</script></div>")]
    public void Words_that_are_shown_are_read(string html) => Assert.Equal("230 @.050", HtmlText.Read(html));
}
