namespace GrindShop.Shop.Specs.Entry;

/// <summary>Lifts: .355 lobe, lobe lift .355/.360, .560/.570 valve, .560 lift w/ 1.6 rockers, 355 lobe, 9.0 mm lift and bare decimals.</summary>
internal static class LiftReader
{
    private const double LeastIn = .08, MostIn = 1.3, LeastWhole = 150;

    /// <summary>Below it a lift "with 1.6 rockers" may still be the lobe's.</summary>
    private const double LeastValveIn = .4;

    public static int Read(EntryDraft draft, int at)
    {
        var text = draft.Text;
        var before = LiftLabel.At(text, at);
        if (Pair.At(text, text.Join(before.Next)) is not { } pair)
            return 0;
        var behind = text[pair.Next].OpensLine ? LiftLabel.None(pair.Next) : LiftLabel.At(text, pair.Next);
        if (before.IsAny && behind.IsAny && IsLift(Pair.At(text, text.Join(behind.Next)), labelled: true))
            behind = LiftLabel.None(pair.Next);
        var label = before.With(behind);
        if (!IsLift(pair, label.IsAny))
            return 0;
        var rocker = RockerReader.With(text, Math.Max(pair.Next, label.Next));
        return Take(draft, at, draft.Context.Place(pair), label, rocker) - at;
    }

    private static int Take(EntryDraft draft, int from, Pair pair, LiftLabel label, Figure? rocker)
    {
        var to = Math.Max(pair.Next, label.Next);
        var field = label.Field ?? (rocker is not null && pair.First.LengthIn > LeastValveIn ? LobeField.ValveLift : null);
        if (field is not null)
            draft.TakeLobes(from, to, field, pair);
        else
            draft.Lifts.Add(new BarePair(from, to, Inches(pair)));
        if (rocker is not { } ratio)
            return to;
        draft.Take(to, ratio.Next, CamField.Rocker, ratio.Value);
        return ratio.Next;
    }

    private static Pair Inches(Pair pair) => pair with
    {
        First = pair.First with { Value = pair.First.LengthIn, IsWhole = false },
        Second = pair.Second is { } second ? second with { Value = second.LengthIn, IsWhole = false } : null,
    };

    private static bool IsLift(Pair? pair, bool labelled) => pair is { } known && IsLift(known.First, labelled) && (known.Second is not { } second || IsLift(second, labelled));

    private static bool IsLift(Figure figure, bool labelled) => figure.IsWhole ? labelled && figure.Within(LeastWhole, MostIn * 1000) : figure.Within(LeastIn, labelled ? MostIn : 1);
}

/// <summary>The words that say where a lift is measured.</summary>
/// <param name="Field">Lobe or valve lift, where that was said.</param>
internal readonly record struct LiftLabel(bool IsLift, LobeField? Field, int Next)
{
    public bool IsAny => IsLift || Field is not null;

    public static LiftLabel None(int at) => new(false, null, at);

    public static LiftLabel At(EntryText text, int at)
    {
        var label = None(at);
        while (label.More(text) is { } longer)
            label = longer;
        return label;
    }

    public LiftLabel With(LiftLabel behind) => behind.IsAny ? new(IsLift || behind.IsLift, Field ?? behind.Field, behind.Next) : this;

    private LiftLabel? More(EntryText text)
    {
        if (IsAny && text[Next].OpensLine)
            return null;
        if (!IsLift && text.Is(Next, EntryWords.Lift))
            return this with { IsLift = true, Next = Next + 1 };
        if (Field is not null)
            return null;
        var at = BehindAt(text, Next);
        var field = text[at].Text switch
        {
            "lobe" or "lobes" when !text.Is(at + 1, EntryWords.Separation) && !text.Is(at + 1, EntryWords.Centerline) => LobeField.LobeLift,
            "cam" or "tappet" or "lifter" when text.Is(at + 1, EntryWords.Lift) || at > Next => LobeField.LobeLift,
            "valve" or "valves" or "gross" when !text.Is(at + 1, EntryWords.Lash) => LobeField.ValveLift,
            _ => null,
        };
        return field is null ? null : this with { Field = field, Next = at + 1 };
    }

    private static int BehindAt(EntryText text, int at)
    {
        if (text[at] is not { Text: "at" or "@" })
            return at;
        return text.Is(at + 1, "the") ? at + 2 : at + 1;
    }
}
