namespace GrindShop.Shop.Specs.Entry;

internal enum Lobe
{
    Unsaid,
    Intake,
    Exhaust,
    Both,
}

/// <summary>One figure, or one for the intake and one for the exhaust: 230/236, int 230 ex 236, 230 in / 236 ex.</summary>
/// <param name="First">The intake's, or the only one.</param>
/// <param name="Lobe">Which lobe a single figure is for, as far as it was said.</param>
/// <param name="Next">The token behind it.</param>
internal readonly record struct Pair(Figure First, Figure? Second, Lobe Lobe, int Next)
{
    /// <summary>The lobe was said with this very figure, not with an earlier one of the line.</summary>
    public bool IsSure { get; init; } = true;

    public static Pair? At(EntryText text, int at)
    {
        var (lobe, from) = NameBefore(text, at);
        if (Figure.At(text, from) is not { } first)
            return null;
        var next = first.Next;
        if (lobe == Lobe.Unsaid)
            (lobe, next) = NameBehind(text, next);
        return lobe == Lobe.Unsaid ? Unnamed(text, first) : Named(text, first, lobe, next);
    }

    /// <summary>Two numbers that may be the same figure of two lobes.</summary>
    public static bool Belong(double one, double other, bool tight)
    {
        if (Math.Min(one, other) >= 100 && Math.Abs(one - other) > 30)
            return false;
        return one > 0 && other > 0 && other / one is var ratio && (tight ? ratio is > .8 and < 1.25 : ratio is > .6 and < 1.5);
    }

    /// <summary>"in" that stands for the intake: the exhaust follows.</summary>
    public static bool IsIntakeIn(EntryText text, int at)
    {
        if (!text.Is(at, "in"))
            return false;
        var other = Separator(text, at + 1);
        return text.Is(other, EntryWords.Exhaust) || (text[other].IsNumber && text.Is(other + 1, EntryWords.Exhaust));
    }

    private static Pair Unnamed(EntryText text, Figure first)
    {
        var behind = Separator(text, first.Next);
        if (text[behind].OpensLine || Figure.At(text, behind) is not { } second)
            return new Pair(first, null, Lobe.Unsaid, first.Next);
        var tight = !text.Is(first.Next, "/");
        return Belong(first.Value, second.Value, tight) && !(tight && IsLabelled(text, second))
            ? new Pair(first, second, Lobe.Both, second.Next)
            : new Pair(first, null, Lobe.Unsaid, first.Next);
    }

    private static Pair Named(EntryText text, Figure first, Lobe lobe, int next)
    {
        var single = new Pair(first, null, lobe, next);
        var (other, from) = NameBefore(text, Separator(text, next));
        if (Figure.At(text, from) is not { } second)
            return single;
        next = second.Next;
        if (other == Lobe.Unsaid)
            (other, next) = NameBehind(text, next);
        if (other == lobe || other == Lobe.Unsaid || !Belong(first.Value, second.Value, tight: false))
            return single;
        return lobe == Lobe.Intake ? new Pair(first, second, Lobe.Both, next) : new Pair(second, first, Lobe.Both, next);
    }

    private static (Lobe Lobe, int Next) NameBefore(EntryText text, int at)
    {
        if (text[text.Join(at + 1)].OpensLine)
            return (Lobe.Unsaid, at);
        if (text.Is(at, EntryWords.Intake) || (text.Is(at, "in") && text[at + 1].IsNumber && text.Is(Separator(text, at + 2), EntryWords.Exhaust)))
            return (Lobe.Intake, text.Join(at + 1));
        return text.Is(at, EntryWords.Exhaust) ? (Lobe.Exhaust, text.Join(at + 1)) : (Lobe.Unsaid, at);
    }

    /// <summary>A name behind the figure belongs to it unless it opens the next figure: ".355 int 230 ex 236".</summary>
    private static (Lobe Lobe, int Next) NameBehind(EntryText text, int at)
    {
        var lobe = text.Is(at, EntryWords.Intake) || IsIntakeIn(text, at) || text[at] is { Text: "i", Spaced: false } ? Lobe.Intake
            : text.Is(at, EntryWords.Exhaust) || text[at] is { Text: "e", Spaced: false } ? Lobe.Exhaust
            : Lobe.Unsaid;
        var opensNext = !text[at + 1].OpensLine && (text.Is(at + 1, EntryWords.Centerline) || text.Is(at + 1, EntryWords.Duration) || text.Is(at + 1, EntryWords.Lift));
        if (lobe == Lobe.Unsaid || text[at].OpensLine || opensNext)
            return (Lobe.Unsaid, at);
        return text[at + 1] is { IsNumber: true, OpensLine: false } && !ClosesAnother(text, at + 2) ? (Lobe.Unsaid, at) : (lobe, at + 1);
    }

    private static bool ClosesAnother(EntryText text, int at) =>
        (text.Is(at, EntryWords.Exhaust) || text.Is(at, EntryWords.Intake) || text.Is(at, "e") || text.Is(at, "i")) && !text[at + 1].IsNumber;

    private static int Separator(EntryText text, int at) => text[at] is { OpensLine: false, Text: "/" or "-" or "&" or "," or "and" or "x" or "by" } ? at + 1 : at;

    /// <summary>The second number has a label of its own: "112 108 icl".</summary>
    private static bool IsLabelled(EntryText text, Figure second) => second.Value is >= 80 and <= 150
        ? text.Is(second.Next, "+") || TimingLabel.At(text, second.Next) is { Kind: < TimingKind.Advance }
        : second.Value < 3 && text.Is(second.Next, EntryWords.Rocker);
}
