using GrindShop.Shop.Engines;

namespace GrindShop.Shop.Specs.Entry;

/// <summary>The distributor's gear: iron gear, bronze dist gear, distributor gear: poly, nitrided steel gear.</summary>
internal static class GearReader
{
    private static readonly Dictionary<string, DistributorGear> Materials = new()
    {
        ["iron"] = DistributorGear.Iron,
        ["bronze"] = DistributorGear.Bronze,
        ["poly"] = DistributorGear.PolymerComposite,
        ["polymer"] = DistributorGear.PolymerComposite,
        ["composite"] = DistributorGear.PolymerComposite,
        ["plastic"] = DistributorGear.PolymerComposite,
        ["nitrided"] = DistributorGear.NitrocarburizedSteel,
        ["nitrocarburized"] = DistributorGear.NitrocarburizedSteel,
    };

    public static int Read(EntryDraft draft, int at)
    {
        var text = draft.Text;
        if (Before(text, at) is { } before)
            return Take(draft, at, before.Next, before.Gear);
        if (GearWord(text, at) is not { } label)
            return PlainSteel(draft, at);
        return Material(text, text.Join(label)) is { } material ? Take(draft, at, BehindGear(text, material.Next), material.Gear) : 0;
    }

    private static (DistributorGear Gear, int Next)? Before(EntryText text, int at) =>
        !text.Is(at - 1, "cam") && Material(text, at) is { } material && GearWord(text, material.Next) is { } next ? (material.Gear, next) : null;

    private static (DistributorGear Gear, int Next)? Material(EntryText text, int at)
    {
        var from = text.Is(at, "cast") ? at + 1 : at;
        if (text[from].Kind != TokenKind.Word || !Materials.TryGetValue(text[from].Text, out var gear))
            return null;
        var next = from + 1;
        while (text[next] is { Text: "steel" or "composite" or "polymer" or "cast" })
            next++;
        return (gear, next);
    }

    private static int? GearWord(EntryText text, int at)
    {
        var next = text[at] is { Text: "dist" or "distributor" or "dizzy" or "distrib" } ? at + 1 : at;
        if (text[next] is { Text: "gear" or "gears" } && !text[next].OpensLine && !text.Is(next - 1, "cam"))
            return next + 1;
        if (text[at] is { Text: "gear" } && at == next)
            return at + 1;
        return next > at ? next : null;
    }

    private static int BehindGear(EntryText text, int at) => text.Is(at, "gear") && !text[at].OpensLine ? at + 1 : at;

    private static int PlainSteel(EntryDraft draft, int at)
    {
        if (!draft.Text.Is(at, "steel") || draft.Text.Is(at - 1, "cam") || GearWord(draft.Text, at + 1) is not { } to)
            return 0;
        draft.Doubt(at, to, "Is the steel gear on the distributor nitrocarburized (nitrided)?");
        return to - at;
    }

    private static int Take(EntryDraft draft, int from, int to, DistributorGear gear)
    {
        draft.Take(from, to, "distributorGear", "distributor gear", draft.Spec.DistributorGear, gear, DistributorGears.Words, (spec, value) => spec with { DistributorGear = value });
        return to - from;
    }
}
