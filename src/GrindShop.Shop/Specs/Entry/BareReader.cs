namespace GrindShop.Shop.Specs.Entry;

/// <summary>Single numbers without a word of their own, by what they can be: 112, 112/108, 1.6; what remains doubtful is asked.</summary>
internal static class BareReader
{
    private const double LeastAngle = 90, MostAngle = 130, LeastRatio = 1.3, MostRatio = 2, MostLashIn = .09, LeastWholeLift = 341, MostWholeLift = 700;

    public static int Read(EntryDraft draft, int at)
    {
        if (Pair.At(draft.Text, at) is not { Lobe: Lobe.Unsaid or Lobe.Both } pair || !draft.Text[at].IsNumber)
            return 0;
        return IsAngle(pair.First) ? Angle(draft, at, pair)
            : pair.First.IsWhole ? Whole(draft, at, pair)
            : pair.First.Value is > 0 and <= MostLashIn ? Ask(draft, at, pair, $"Is {draft.Text.Slice(at, pair.Next)} the lash?")
            : Ratio(draft, at, pair);
    }

    private static bool IsAngle(Figure figure) => figure.Within(LeastAngle, MostAngle);

    private static int Angle(EntryDraft draft, int at, Pair pair)
    {
        if (pair.Second is not { } second)
        {
            if (draft.Take(at, pair.Next, CamField.Separation, pair.First.Value) && IsStrange(draft.Text, pair.Next))
                draft.Doubt(at, pair.Next, FormattableString.Invariant($"Is {pair.First.Value:0.##} the lobe separation? It is taken so."));
            return pair.Next - at;
        }
        var first = pair.First.Next;
        if (second.Value > pair.First.Value || !IsAngle(second))
            return Ask(draft, at, pair, $"Which is the lobe separation and which the intake centreline: {draft.Text.Slice(at, pair.Next)}?");
        if (draft.Take(at, first, CamField.Separation, pair.First.Value))
            draft.Take(first, pair.Next, CamField.IntakeCenterline, second.Value);
        return pair.Next - at;
    }

    /// <summary>A word follows that has nothing to do with cams: the figure may belong to it.</summary>
    private static bool IsStrange(EntryText text, int at) =>
        text[at] is { IsWord: true, OpensLine: false } word && !EntryWords.Known.Contains(word.Text) && !EntryWords.Filler.Contains(word.Text);

    private static int Whole(EntryDraft draft, int at, Pair pair) => pair.First.Within(LeastWholeLift, MostWholeLift)
        ? Ask(draft, at, pair, $"Is {draft.Text.Slice(at, pair.Next)} a lift in thousandths, and at the lobe or at the valve?")
        : 0;

    private static int Ratio(EntryDraft draft, int at, Pair pair)
    {
        if (pair.Second is not null || !pair.First.Within(LeastRatio, MostRatio))
            return 0;
        if (draft.Take(at, pair.Next, CamField.Rocker, pair.First.Value))
            draft.Doubt(at, pair.Next, FormattableString.Invariant($"Is {pair.First.Value:0.##} the rocker ratio? It is taken so."));
        return pair.Next - at;
    }

    private static int Ask(EntryDraft draft, int at, Pair pair, string question)
    {
        draft.Doubt(at, pair.Next, question);
        return pair.Next - at;
    }
}
