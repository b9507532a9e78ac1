using GrindShop.Shop.Buying;
using GrindShop.Web.Office;
using Xunit;

namespace GrindShop.Web.Tests.Office;

public class FigureReaderTests
{
    [Fact]
    public void Price_breaks_are_read_as_they_are_written()
    {
        IReadOnlyList<PriceBreak> breaks = [new(10, 160.5m), new(50, 140m)];
        var read = new FigureReader();
        Assert.Equal(breaks, PriceBreakText.Read(PriceBreakText.Write(breaks), read));
        Assert.Equal(breaks, PriceBreakText.Read(" 10: $160.50\n\n50; 140\n", read));
        Assert.Null(read.Refusal);
    }

    [Theory]
    [InlineData("ten 160", "quantity in \"ten 160\"")]
    [InlineData("10", "price in \"10\"")]
    [InlineData("10.5 160", "whole number")]
    public void What_cannot_be_read_is_named(string text, string words)
    {
        var read = new FigureReader();
        PriceBreakText.Read(text, read);
        Assert.Contains(words, read.Refusal!.Reason);
    }

    [Fact]
    public void Percent_and_dollars_may_be_typed_with_their_signs()
    {
        var read = new FigureReader();
        Assert.Equal((.95, 12.35m, 7), (read.Share("95 %", "service"), read.Amount("$12.345", "cost"), read.Count("7", "count")));
        Assert.Null(read.Refusal);
    }
}
