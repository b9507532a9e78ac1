namespace GrindShop.Shop.Specs.Entry;

/// <summary>The angles of the cam: 112 lsa, on a 112, 112+4, 112/108, in at 108, 108 icl, 4 advanced, straight up.</summary>
internal static class TimingReader
{
    private const double Least = 80, Most = 150, MostShift = 20, MostCheckIn = .06;

    public static int Read(EntryDraft draft, int at) => StraightUp(draft, at)
        ?? Plus(draft, at) ?? Labelled(draft, at) ?? Installed(draft, at) ?? On(draft, at) ?? Behind(draft, at) ?? Shift(draft, at) ?? 0;

    private static int? StraightUp(EntryDraft draft, int at)
    {
        if (draft.Text.Phrase(at, "straight", "up") is not { } to)
            return null;
        return draft.Take(at, to, CamField.Advance, 0) ? to - at : 0;
    }

    /// <summary>112+4: lobe separation and advance. What is meant by 112-4 is asked.</summary>
    private static int? Plus(EntryDraft draft, int at)
    {
        var text = draft.Text;
        if (Angle(text, at) is not { } lsa || text[lsa.Next] is not { Text: "+" or "-", OpensLine: false } sign || Small(text, lsa.Next + 1) is not { } shift)
            return null;
        var to = text.Is(shift.Next, EntryWords.Advance) || text.Is(shift.Next, "lsa") ? shift.Next + 1 : shift.Next;
        if (sign.Text == "-")
        {
            draft.Take(at, lsa.Next, CamField.Separation, lsa.Value);
            draft.Doubt(lsa.Next, to, FormattableString.Invariant($"Is the cam {shift.Value:0.##} degrees retarded, or {shift.Value:0.##} advanced?"));
        }
        else if (draft.Take(at, lsa.Next, CamField.Separation, lsa.Value))
            draft.Take(lsa.Next, to, CamField.Advance, shift.Value);
        return to - at;
    }

    private static int? Labelled(EntryDraft draft, int at)
    {
        var text = draft.Text;
        if (TimingLabel.At(text, at) is not { } label)
            return null;
        var from = text.Join(label.Next);
        if (label.Kind == TimingKind.Centerline && Pair.At(text, from) is { Second: not null } both && both.First.Within(Least, Most))
            return Take(draft, at, both.First.Next, TimingKind.IntakeCenterline, both.First.Value) + ExhaustCenterline(draft, both.First.Next, both.Next, both.Second.Value.Value);
        var negative = text.Is(from, "-") && !text[from + 1].Spaced;
        var figure = Figure.At(text, negative || text.Is(from, "+") ? from + 1 : from);
        if (figure is not { } angle || !Fits(label.Kind, angle) || text[from].OpensLine)
            return null;
        if (text[angle.Next] is { Text: "-" or "/" } && Figure.At(text, angle.Next + 1) is { } until && Fits(label.Kind, until) && TimingLabel.At(text, until.Next) is null)
            return Range(draft, at, until.Next, label.Kind);
        return Take(draft, at, angle.Next, label.Kind, negative ? -angle.Value : angle.Value);
    }

    /// <summary>"in at 108", "installed on 108", "degreed in at 108".</summary>
    private static int? Installed(EntryDraft draft, int at)
    {
        var text = draft.Text;
        if (text[at] is not { Text: "in" or "installed" or "install" or "degreed" or "phased" })
            return null;
        var from = at + 1;
        while (text[from] is { Text: "in" or "at" or "@" or "on" or "a", OpensLine: false })
            from++;
        return from > at + 1 || text.Is(at, "installed") ? Alone(draft, at, from, TimingKind.IntakeCenterline) : null;
    }

    /// <summary>"on a 112" and "on 112".</summary>
    private static int? On(EntryDraft draft, int at)
    {
        var text = draft.Text;
        if (!text.Is(at, "on") && !text.Is(at, "a"))
            return null;
        var from = text.Is(at, "on") && text.Is(at + 1, "a") ? at + 2 : at + 1;
        return Alone(draft, at, from, IsSeparation(draft, at - 1) ? TimingKind.IntakeCenterline : TimingKind.Separation);
    }

    private static int? Alone(EntryDraft draft, int at, int from, TimingKind kind)
    {
        var text = draft.Text;
        if (Angle(text, from) is not { } angle || text[from].OpensLine || text.Is(angle.Next, "/") || text.Is(angle.Next, "+"))
            return null;
        var label = TimingLabel.At(text, angle.Next);
        return Take(draft, at, label?.Next ?? angle.Next, label is { Kind: < TimingKind.Advance } ? label.Value.Kind : kind, angle.Value);
    }

    /// <summary>A figure with its name behind it: 112 lsa, 108 icl, 4 deg advanced; "@ 108" behind the separation is the centreline.</summary>
    private static int? Behind(EntryDraft draft, int at)
    {
        var text = draft.Text;
        if (text[at] is { Text: "@" or "at" } && IsSeparation(draft, at - 1))
            return Alone(draft, at, at + 1, TimingKind.IntakeCenterline);
        if (Figure.At(text, at) is { } least && text.Is(least.Next, "-") && Figure.At(text, least.Next + 1) is { } most
            && TimingLabel.At(text, most.Next) is { } both && Fits(both.Kind, least) && Fits(both.Kind, most))
            return Range(draft, at, both.Next, both.Kind);
        if (Figure.At(text, at) is not { } figure || TimingLabel.At(text, text.Is(figure.Next, "of") ? figure.Next + 1 : figure.Next) is not { } label)
            return null;
        if (text[figure.Next].OpensLine || !Fits(label.Kind, figure) || OpensNext(text, label))
            return null;
        return Take(draft, at, label.Next, label.Kind, figure.Value);
    }

    /// <summary>In "112 icl 108" the label stands before its figure, not behind the other one; the nearer way of reading wins only where nothing follows.</summary>
    private static bool OpensNext(EntryText text, TimingLabel label) =>
        text.Is(label.Next, ":") || text.Is(label.Next, "=");

    private static int? Shift(EntryDraft draft, int at)
    {
        var text = draft.Text;
        if (text[at] is not { Text: "+" } || Small(text, at + 1) is not { } shift || text[at + 1].Spaced)
            return null;
        var to = text.Is(shift.Next, EntryWords.Advance) ? shift.Next + 1 : shift.Next;
        return Take(draft, at, to, TimingKind.Advance, shift.Value);
    }

    private static int Take(EntryDraft draft, int from, int to, TimingKind kind, double value)
    {
        if (kind == TimingKind.Centerline)
            draft.Doubt(from, to, FormattableString.Invariant($"Is {value:0.##} the intake centreline? It is taken so."));
        if (kind == TimingKind.ExhaustCenterline)
            return ExhaustCenterline(draft, from, to, value);
        var field = kind switch
        {
            TimingKind.Separation => CamField.Separation,
            TimingKind.Advance or TimingKind.Retard => CamField.Advance,
            _ => CamField.IntakeCenterline,
        };
        draft.Take(from, to, field, kind == TimingKind.Retard && value != 0 ? -value : value);
        return to - from;
    }

    /// <summary>The exhaust centreline is no field of its own: the separation is half of both centrelines.</summary>
    private static int ExhaustCenterline(EntryDraft draft, int from, int to, double value)
    {
        draft.Later.Add(() => ExhaustLine.Settle(draft, from, to, value));
        return to - from;
    }

    private static int Range(EntryDraft draft, int from, int to, TimingKind kind)
    {
        draft.Doubt(from, to, $"Two figures were given for the {(kind == TimingKind.Separation ? "lobe separation" : "angle")}: which one shall be ground?");
        return to - from;
    }

    private static bool IsSeparation(EntryDraft draft, int at) =>
        draft.Parts.LastOrDefault() is { Fields: ["lobeSeparationCamDeg"] } last && last.End == draft.Text[at].Stop;

    private static bool Fits(TimingKind kind, Figure figure) => kind is TimingKind.Advance or TimingKind.Retard ? figure.Value is 0 or (> MostCheckIn and <= MostShift) : figure.Within(Least - 40, Most + 60);

    private static Figure? Angle(EntryText text, int at) => Figure.At(text, at) is { } figure && figure.Within(Least, Most) ? figure : null;

    private static Figure? Small(EntryText text, int at) => Figure.At(text, at) is { } figure && figure.Within(0, MostShift) && !text[at].OpensLine ? figure : null;
}
