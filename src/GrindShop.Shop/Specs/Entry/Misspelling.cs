namespace GrindShop.Shop.Specs.Entry;

/// <summary>How far two words are apart.</summary>
internal static class Misspelling
{
    /// <summary>
    /// Least number of letters put in, left out, replaced, or exchanged with the neighbour (optimal string alignment:
    /// Damerau, Communications of the ACM 7 (1964) 171-176; Levenshtein 1966).
    /// </summary>
    public static int Steps(string one, string other)
    {
        var steps = new int[one.Length + 1, other.Length + 1];
        for (var i = 0; i <= one.Length; i++)
            steps[i, 0] = i;
        for (var j = 0; j <= other.Length; j++)
            steps[0, j] = j;
        for (var i = 1; i <= one.Length; i++)
            for (var j = 1; j <= other.Length; j++)
                steps[i, j] = Least(steps, one, other, i, j);
        return steps[one.Length, other.Length];
    }

    private static int Least(int[,] steps, string one, string other, int i, int j)
    {
        var replaced = steps[i - 1, j - 1] + (one[i - 1] == other[j - 1] ? 0 : 1);
        var least = Math.Min(Math.Min(steps[i - 1, j], steps[i, j - 1]) + 1, replaced);
        var swapped = i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1];
        return swapped ? Math.Min(least, steps[i - 2, j - 2] + 1) : least;
    }
}
