namespace GrindShop.Lobes.Tests;

public class LobeTableCsvTests
{
    [Fact]
    public void Reads_several_lobes_under_a_header()
    {
        var file = LobeTableCsv.Read("cam deg,cyl 1 intake,cyl 1 exhaust\n0,0.001,0.1\n1,0.002,0.2\n");

        Assert.Empty(file.Broken);
        Assert.Equal(["cyl 1 intake", "cyl 1 exhaust"], file.Lobes.Select(l => l.Name));
        Assert.Equal(new TablePoint(1, 0.2), file.Lobes[1].Points[1]);
    }

    [Fact]
    public void Reads_millimetres_with_semicolons_and_decimal_commas()
    {
        var file = LobeTableCsv.Read("\uFEFFangle;lift mm\r\n-0,5;2,54\r\n0;5,08\r\n");

        Assert.Empty(file.Broken);
        Assert.Equal(new TablePoint(-0.5, 0.1), file.Lobes.Single().Points[0]);
    }

    [Fact]
    public void A_header_is_optional_and_the_unit_can_be_told() =>
        Assert.Equal(new TablePoint(2, 1), LobeTableCsv.Read("# bench 2\n2\t25.4\n", LengthUnit.Millimetre).Lobes.Single().Points.Single());

    [Fact]
    public void Broken_rows_are_named_by_line()
    {
        var file = LobeTableCsv.Read("deg,lift\n0,0.1\n1,abc\n2\n\n3,9\n900,0.1\n0,0.2\n4,NaN\n5,0.3\n");

        Assert.Equal([3, 4, 6, 7, 8, 9], file.Broken.Select(b => b.Line));
        Assert.Equal("\"abc\" is not a number.", file.Broken[0].Message);
        Assert.Equal(2, file.Lobes.Single().Points.Length);
    }

    [Theory]
    [InlineData("")]
    [InlineData("only one column\n1\n2\n")]
    public void A_file_without_a_lobe_says_so(string text) => Assert.NotEmpty(LobeTableCsv.Read(text).Broken);
}
