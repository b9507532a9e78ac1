using GrindShop.Shop.Engines;

namespace GrindShop.Shop.Specs.Entry;

/// <summary>
/// Reads a cam as it is said on the phone or written in a letter, such as <c>230/236 @.050 .355 112+4 hyd roller</c>. Forgiving in spelling and order, never
/// guessing in silence: what may mean two things becomes a doubt, and what is not understood stays in the notes. Takes time in proportion to the text.
/// </summary>
public static class SpecEntry
{
    /// <summary>Characters that are read; what is longer goes to the notes unread.</summary>
    public const int LongestRead = 2000;

    /// <summary>In this order, the more particular way of reading first.</summary>
    private static readonly Func<EntryDraft, int, int>[] Readers =
    [
        TextReader.Read, PumpReader.Read, SkipReader.Read, FiringReader.Read, FamilyReader.Read, GearReader.Read, SizeReader.Read, RockerReader.Read,
        TimingReader.Read, LashReader.Read, LifterReader.Read, DurationReader.Read, LiftReader.Read, BareReader.Read, WordReader.Read,
    ];

    /// <param name="text">One line or several, of any length.</param>
    /// <param name="families">The engines that may be named.</param>
    public static EntryReading Read(string text, IReadOnlyList<EngineFamily> families)
    {
        var draft = new EntryDraft(new EntryText(text, Math.Min(text.Length, LongestRead)), families);
        for (var at = 0; at < draft.Text.Count;)
        {
            if (draft.Text[at].OpensLine)
                draft.Context.NewLine();
            at += Math.Max(1, Step(draft, at));
        }
        Settle(draft);
        return EntryRest.Finish(draft);
    }

    private static int Step(EntryDraft draft, int at)
    {
        foreach (var reader in Readers)
            if (reader(draft, at) is > 0 and var taken)
                return taken;
        return 0;
    }

    private static void Settle(EntryDraft draft)
    {
        BareFigures.Settle(draft);
        draft.Lifter.Settle(draft);
        foreach (var settle in draft.Later)
            settle();
        Hedges.Ask(draft);
    }
}
