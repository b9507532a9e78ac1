using GrindShop.Shop.Orders.Finding;

namespace GrindShop.Shop.Tests.Orders.Finding;

public class OrderQuestionTests
{
    [Theory]
    [InlineData("RV8R-516-08", "rv8r <-> 516 <-> 08:*")]
    [InlineData(".335", "335:*")]
    [InlineData("a&b|!c:*", "a <-> b <-> c:*")]
    [InlineData("O'Hara", "o <-> hara:*")]
    public void Word_is_looked_for_by_its_pieces(string text, string words) => Assert.Equal(words, OrderQuestion.Of(text).Terms[0].Words);

    [Theory]
    [InlineData("(555) 555-0128", "5555550128")]
    [InlineData("+1 555.555.0128", "5555550128")]
    [InlineData("555 0128", "5550128")]
    [InlineData("01", null)]
    [InlineData("call 0128", null)]
    public void Whole_question_may_be_a_phone_number(string text, string? digits) => Assert.Equal(digits, OrderQuestion.Of(text).Terms[^1] is { Ordinal: 0 } whole ? whole.Phone : OrderQuestion.Of(text).Terms[0].Phone ?? digits);

    [Theory]
    [InlineData("C1015", null)]
    [InlineData("Rushborne", "Rushborne")]
    public void Names_may_be_nearly_right_and_numbers_not(string text, string? near) => Assert.Equal(near, OrderQuestion.Of(text).Terms[0].Near);

    [Theory]
    [InlineData("")]
    [InlineData("  '%_ ")]
    [InlineData("a")]
    public void Too_little_is_not_looked_for(string text) => Assert.True(OrderQuestion.Of(text).IsTooShort);

    [Fact]
    public void Signs_of_a_pattern_stand_for_themselves() => Assert.Equal(@"%a\%b\_c\\d%", OrderQuestion.Of(@"a%b_c\d").Terms[0].Part);

    [Theory]
    [InlineData("555-555-0128 (home)", "0128", "555-555-[0128] (home)")]
    [InlineData("555-555-0128", "5550128", "555-[555-0128]")]
    [InlineData("Lena Rushbourne", "rush", "Lena [Rush]bourne")]
    [InlineData("Lena Rushbourne", "bourne", "Lena Rush[bourne]")]
    [InlineData("Lena Rushbourne", "rushborne", "Lena [Rushbourne]")]
    public void Hit_is_marked(string text, string question, string marked) => Assert.Equal(marked, Marked(text, question, true));

    [Fact]
    public void Long_words_are_cut_to_what_stands_around_the_hit()
    {
        var text = Marked($"{string.Concat(Enumerable.Repeat("one more ", 100))}swamp buggy{string.Concat(Enumerable.Repeat(" and so on", 100))}", "buggy", false);

        Assert.StartsWith("… ", text, StringComparison.Ordinal);
        Assert.Contains("swamp [buggy] and", text, StringComparison.Ordinal);
        Assert.EndsWith(" …", text, StringComparison.Ordinal);
        Assert.InRange(text.Length, 100, 220);
    }

    private static string Marked(string text, string question, bool isName) =>
        string.Concat(HitMarks.Of(text, OrderQuestion.Of(question).Terms, isName).Select(piece => piece.IsHit ? $"[{piece.Text}]" : piece.Text));
}
