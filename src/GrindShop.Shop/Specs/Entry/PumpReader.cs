namespace GrindShop.Shop.Specs.Entry;

/// <summary>The fuel pump: mech fuel pump, fuel pump lobe, fuel pump: mechanical, no fuel pump, electric pump. An electric one needs no lobe on the cam.</summary>
internal static class PumpReader
{
    private const int LookBack = 6;

    private enum Pump
    {
        /// <summary>Named, but not how it is driven.</summary>
        Bare,
        ByCam,
        Electric,
    }

    private static readonly HashSet<string> Mechanical = ["mechanical", "mech", "manual"];
    private static readonly HashSet<string> Electric = ["electric", "electrical", "elec"];
    private static readonly HashSet<string> Lobe = ["lobe", "eccentric"];
    private static readonly HashSet<string> Between = ["a", "any", "the", "running", "using", "have", "need", "with"];
    private static readonly HashSet<string> Nots = [.. EntryWords.Negation, "don't", "dont", "won't", "wont", "doesn't", "doesnt", "nor"];
    private static readonly HashSet<string> Ends = [",", ";", ".", ":", "/"];

    public static int Read(EntryDraft draft, int at)
    {
        var text = draft.Text;
        if (text.Is(at, Nots))
            return Named(text, Behind(text, at + 1)) is { } named ? Denied(draft, at, named.Next, named.Pump) : 0;
        if (Named(text, at) is not { } pump)
            return 0;
        return pump.Pump == Pump.Bare || IsDenied(text, at) ? Ask(draft, at, pump.Next) : Take(draft, at, pump.Next, pump.Pump == Pump.ByCam);
    }

    /// <summary>Behind up to two small words: "don't need the pump".</summary>
    private static int Behind(EntryText text, int at) =>
        Enumerable.Range(0, 2).Aggregate(at, (next, _) => text.Is(next, Between) && !text[next].OpensLine ? next + 1 : next);

    private static (Pump Pump, int Next)? Named(EntryText text, int at)
    {
        Pump? how = text.Is(at, Mechanical) ? Pump.ByCam : text.Is(at, Electric) ? Pump.Electric : null;
        if (PumpWord(text, how is null ? at : at + 1, how is null) is not { } next)
            return null;
        if (text.Is(next, Lobe) && !text[next].OpensLine)
            return (how ?? Pump.ByCam, next + 1);
        if (how is not null)
            return (how.Value, next);
        var said = text.Join(next);
        return text[said].OpensLine || Adjective(text, said) ? (Pump.Bare, next)
            : text.Is(said, Mechanical) ? (Pump.ByCam, said + 1)
            : text.Is(said, Electric) ? (Pump.Electric, said + 1)
            : (Pump.Bare, next);
    }

    /// <summary>It belongs to what follows: "fuel pump mech roller".</summary>
    private static bool Adjective(EntryText text, int at) => text.Is(at + 1, EntryWords.Roller) || text.Is(at + 1, EntryWords.Lifter) || text.Is(at + 1, "flat");

    private static int? PumpWord(EntryText text, int at, bool needsFuel)
    {
        if (text.Is(at, "fuel") && (needsFuel || !text[at].OpensLine) && text.Is(at + 1, "pump") && !text[at + 1].OpensLine)
            return at + 2;
        return !needsFuel && text.Is(at, "pump") && !text[at].OpensLine ? at + 1 : null;
    }

    private static bool IsDenied(EntryText text, int at)
    {
        for (var back = at - 1; back >= at - LookBack && back >= 0 && !text.Is(back, Ends) && !text[back + 1].OpensLine; back--)
            if (text.Is(back, Nots))
                return true;
        return false;
    }

    private static int Denied(EntryDraft draft, int from, int to, Pump pump) => pump == Pump.Electric ? Ask(draft, from, to) : Take(draft, from, to, false);

    private static int Ask(EntryDraft draft, int from, int to)
    {
        draft.Doubt(from, to, "Is the fuel pump driven by the cam, or is it electric?");
        return to - from;
    }

    private static int Take(EntryDraft draft, int from, int to, bool byCam)
    {
        draft.Take(from, to, "mechanicalFuelPump", "mechanical fuel pump", draft.Spec.MechanicalFuelPump, byCam, value => value ? "yes" : "no", (spec, value) => spec with { MechanicalFuelPump = value });
        return to - from;
    }
}
