using GrindShop.Shop.Records;

namespace GrindShop.Shop.Tests.Records;

/// <summary>RFC 4180, section 2.</summary>
public class CsvTextTests
{
    [Theory]
    [InlineData("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", "aaa|bbb|ccc", "zzz|yyy|xxx")]
    [InlineData("aaa,bbb,ccc\r\nzzz,yyy,xxx", "aaa|bbb|ccc", "zzz|yyy|xxx")]
    [InlineData("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx", "aaa|b\r\nbb|ccc", "zzz|yyy|xxx")]
    [InlineData("\"aaa\",\"b\"\"bb\",\"c,c\"\n\nzzz,,", "aaa|b\"bb|c,c", "zzz||")]
    public void Records_follow_the_standard(string text, string first, string second) =>
        Assert.Equal([first, second], CsvText.Records(text).Select(record => string.Join('|', record.Cells)));

    [Fact]
    public void Record_carries_the_line_it_starts_on() =>
        Assert.Equal([1, 2, 5], CsvText.Records("a,b\n\"c\nd\",e\n\nf,g\n").Select(record => record.Line));
}
