using GrindShop.Web.Floor;

namespace GrindShop.Web.Tests.Floor;

public sealed class ScannedCodeTests
{
    [Theory]
    [InlineData("J1042")]
    [InlineData(" j1042 ")]
    [InlineData("j 1042\r\n")]
    [InlineData("http://host/floor/jobs/J1042")]
    [InlineData("HTTPS://SHOP.EXAMPLE:5080/FLOOR/JOBS/J1042/")]
    [InlineData("http://host/floor/jobs/J1042?from=paper#top")]
    [InlineData("/floor/jobs/j1042")]
    public void A_scanned_address_or_a_typed_code_gives_the_code(string given) => Assert.Equal("J1042", ScannedCode.Read(given));

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("///")]
    public void Nothing_given_gives_nothing(string? given) => Assert.Equal("", ScannedCode.Read(given));
}
