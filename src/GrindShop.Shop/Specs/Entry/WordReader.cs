using GrindShop.Shop.Engines;

namespace GrindShop.Shop.Specs.Entry;

/// <summary>Words: which cam of two, which lobe the line goes on about, and what the engine is used for.</summary>
internal static class WordReader
{
    private const int MostUseWords = 12;

    private static readonly HashSet<string> Uses =
    [
        "street", "strip", "drag", "drags", "race", "racing", "racer", "marine", "boat", "jetboat", "tow", "tows", "towing", "hauling", "truck", "pickup", "track", "circle", "dirt", "oval", "road", "course",
        "daily", "driver", "bracket", "tractor", "pull", "pulling", "puller", "restoration", "vintage", "cruiser", "cruising", "weekend", "land", "speed", "hotrod", "motorhome", "farm", "off",
    ];

    /// <summary>Words of a use that mean one only together with another.</summary>
    private static readonly HashSet<string> Half = ["track", "circle", "road", "course", "off", "land", "speed", "driver", "daily", "pull", "weekend"];

    private static readonly HashSet<string> Joints = ["/", ",", "&", "-", "and", "a", "the", "car", "or", "some", "strip"];

    public static int Read(EntryDraft draft, int at)
    {
        if (Both(draft.Text, at) is { } both)
            return Name(draft, at, both, Lobe.Both);
        if (draft.Text.Is(at, EntryWords.Intake))
            return Name(draft, at, at + 1, Lobe.Intake);
        if (draft.Text.Is(at, EntryWords.Exhaust))
            return Name(draft, at, at + 1, Lobe.Exhaust);
        return Side(draft, at) ?? Use(draft, at) ?? 0;
    }

    private static int? Both(EntryText text, int at) => text.Phrase(at, "i", "/", "e") ?? text.Phrase(at, "both")
        ?? (text.Is(at, EntryWords.Intake) && text[at + 1] is { Text: "/" or "&" or "and" } && text.Is(at + 2, EntryWords.Exhaust) ? at + 3 : null);

    private static int Name(EntryDraft draft, int from, int to, Lobe lobe)
    {
        var behind = draft.Text.Is(to, "lobe") || draft.Text.Is(to, ":") ? to + 1 : to;
        draft.Context.Name(lobe == Lobe.Both ? Lobe.Unsaid : lobe, draft.Text[from].OpensLine && (draft.Text[behind].OpensLine || draft.Text[behind].Kind == TokenKind.End));
        return to - from;
    }

    private static int? Side(EntryDraft draft, int at)
    {
        var text = draft.Text;
        CamSide? side = text[at].Text is "left" or "lh" ? CamSide.Left : text[at].Text is "right" or "rh" ? CamSide.Right : null;
        if (side is not { } named)
            return null;
        var to = text[at + 1] is { Text: "cam" or "camshaft" or "bank" or "side" or "hand" } ? at + 2 : at + 1;
        draft.Later.Add(() =>
        {
            if (to > at + 1 || draft.Family is { HasSides: true })
                draft.Take(at, to, "side", "side", draft.Spec.Side, named, value => value.ToString().ToLowerInvariant(), (spec, value) => spec with { Side = value });
        });
        return to - at;
    }

    private static int? Use(EntryDraft draft, int at)
    {
        var text = draft.Text;
        if (!text.Is(at, Uses))
            return null;
        var to = at + 1;
        for (var next = to; next < at + MostUseWords && !text[next].OpensLine && (text.Is(next, Uses) || text.Is(next, Joints)); next++)
            if (text.Is(next, Uses))
                to = next + 1;
        if (text.Is(to, "car"))
            to++;
        if (to == at + 1 && text.Is(at, Half))
            return null;
        var use = draft.Spec.Use is { } there ? $"{there}, {text.Slice(at, to)}" : text.Slice(at, to);
        if (use.Length > SpecCheck.LongestText)
            return null;
        draft.Spec = draft.Spec with { Use = use };
        draft.Take(at, to, $"use {text.Slice(at, to)}", "use");
        return to - at;
    }
}
