namespace GrindShop.Shop.Specs.Entry;

/// <summary>What stands before or behind a duration: the words "duration" and "advertised", and the lift at which it is counted.</summary>
/// <param name="CheckIn">The check lift, in; null where none was said.</param>
internal readonly record struct DurationLabel(bool IsDuration, bool IsAdvertised, double? CheckIn, int Next)
{
    private const double LeastCheckIn = .001, MostCheckIn = .06;

    /// <summary>Check lifts that are known without an "at" (common practice, no source).</summary>
    private static readonly double[] Usual = [.004, .006, .008, .01, .015, .02, .05];

    private static readonly Dictionary<string, double> Spoken = new() { ["fifty"] = .05, ["six"] = .006, ["twenty"] = .02 };

    public bool IsAny => IsDuration || IsAdvertised || CheckIn is not null;

    public static DurationLabel None(int at) => new(false, false, null, at);

    public static DurationLabel At(EntryText text, int at)
    {
        var label = None(at);
        while (label.More(text) is { } longer)
            label = longer;
        return label;
    }

    public DurationLabel With(DurationLabel behind) => behind.IsAny
        ? new(IsDuration || behind.IsDuration, IsAdvertised || behind.IsAdvertised, CheckIn ?? behind.CheckIn, behind.Next)
        : this;

    private DurationLabel? More(EntryText text)
    {
        if (IsAny && text[Next].OpensLine)
            return null;
        if (!IsDuration && text.Is(Next, EntryWords.Duration))
            return this with { IsDuration = true, Next = Next + 1 };
        if (!IsAdvertised && text.Is(Next, EntryWords.Advertised) && !IsAdvance(text, Next))
            return this with { IsAdvertised = true, Next = Next + 1 };
        return CheckIn is null && Check(text, Next) is { } check ? this with { CheckIn = check.Value, Next = BehindLift(text, check.Next) } : null;
    }

    /// <summary>"adv 4" and "4 adv" are the advance; "280 adv" is the duration.</summary>
    private static bool IsAdvance(EntryText text, int at) => Figure.At(text, text.Join(at + 1)) is { Value: < 90 and not (> 0 and < 1) };

    private static (double Value, int Next)? Check(EntryText text, int at)
    {
        var said = text[at] is { Text: "@" or "at" };
        var from = said ? at + 1 : at;
        if (said && Spoken.TryGetValue(text[from].Text ?? "", out var spoken))
            return (spoken, from + 1);
        if (Figure.At(text, from) is not { } figure || figure.LengthIn is < LeastCheckIn or > MostCheckIn)
            return null;
        var alone = !said && !figure.IsWhole && Usual.Contains(figure.Value) && !text.Is(figure.Next, "/") && !text.Is(figure.Next, EntryWords.Lash)
            && !(text[figure.Next] is { Text: "hot" or "cold" }) && !text.Is(at - 1, EntryWords.Lash);
        alone = alone && (figure.Value == .05 || text[at - 1].IsNumber || text.Is(at - 1, EntryWords.Degree) || text.Is(at - 1, EntryWords.Duration) || text.Is(at - 1, EntryWords.Advertised));
        return said || alone ? (figure.LengthIn, figure.Next) : null;
    }

    /// <summary>"@ .050 tappet lift" and "@ .050 lift", where the lift's own figure does not follow.</summary>
    private static int BehindLift(EntryText text, int at)
    {
        var lift = text.Is(at, EntryWords.Lifter) || text[at] is { Text: "cam" or "lobe" } ? at + 1 : at;
        if (!text.Is(lift, EntryWords.Lift) && !text.Is(lift, "rise"))
            return at;
        return Figure.At(text, text.Join(lift + 1)) is { Value: < 130 or > 340 } ? at : lift + 1;
    }
}
