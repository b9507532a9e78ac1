namespace GrindShop.Web.Office;

/// <summary>A figure as the sum that it is.</summary>
public static class SumWords
{
    /// <summary>"= 12 received − 4 taken"; what is zero is left out, all but the first.</summary>
    public static string Of(int sum, params ReadOnlySpan<(int Count, string What)> terms)
    {
        var words = $"= {terms[0].Count} {terms[0].What}";
        var total = terms[0].Count;
        foreach (var (count, what) in terms[1..])
        {
            total += count;
            if (count != 0)
                words += $" {(count < 0 ? "−" : "+")} {Math.Abs(count)} {what}";
        }
        return total == sum ? words : throw new ArgumentException($"{words} is {total}, not {sum}.", nameof(terms));
    }
}
