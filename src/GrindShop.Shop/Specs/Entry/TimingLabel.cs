namespace GrindShop.Shop.Specs.Entry;

internal enum TimingKind
{
    Separation,
    IntakeCenterline,
    ExhaustCenterline,
    Centerline,
    Advance,
    Retard,
}

/// <summary>The words that name an angle of the cam, before its figure or behind it.</summary>
internal readonly record struct TimingLabel(TimingKind Kind, int Next)
{
    public static TimingLabel? At(EntryText text, int at)
    {
        var token = text[at];
        if (token.Kind != TokenKind.Word)
            return null;
        if (token.Text is "icl" or "ecl")
            return new(token.Text == "icl" ? TimingKind.IntakeCenterline : TimingKind.ExhaustCenterline, at + 1);
        if (token.Text is "lobe" && (text.Is(at + 1, EntryWords.Separation) || text.Is(at + 1, EntryWords.Centerline)))
            return new(TimingKind.Separation, BehindAngle(text, at + 2));
        if (text.Is(at, EntryWords.Separation))
            return new(TimingKind.Separation, BehindAngle(text, at + 1));
        return Centerline(text, at) ?? Shift(text, at);
    }

    private static TimingLabel? Centerline(EntryText text, int at)
    {
        var kind = text.Is(at, EntryWords.Intake) || text.Is(at, "in") ? TimingKind.IntakeCenterline
            : text.Is(at, EntryWords.Exhaust) ? TimingKind.ExhaustCenterline
            : TimingKind.Centerline;
        var from = kind == TimingKind.Centerline ? at : text.Is(at + 1, "lobe") ? at + 2 : at + 1;
        var next = text.Phrase(from, "c", "/", "l") ?? (text.Is(from, EntryWords.Centerline) ? from + 1 : (int?)null);
        return next is { } behind ? new(kind, text.Is(behind, "line") ? behind + 1 : behind) : null;
    }

    private static TimingLabel? Shift(EntryText text, int at) =>
        text.Is(at, EntryWords.Retard) ? new(TimingKind.Retard, BehindBy(text, at + 1))
        : text.Is(at, EntryWords.Advance) ? new(TimingKind.Advance, BehindBy(text, at + 1))
        : null;

    private static int BehindAngle(EntryText text, int at) => text.Is(at, "angle") ? at + 1 : at;

    private static int BehindBy(EntryText text, int at) => text.Is(at, "by") ? at + 1 : at;
}
