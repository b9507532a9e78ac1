namespace GrindShop.Shop.Specs.Entry;

/// <summary>Closes a reading: marks and filling words join the part beside them, everything else that was not understood becomes a note.</summary>
internal static class EntryRest
{
    private const string Between = "; ";

    private static readonly HashSet<string> Marks = [",", ";", ".", "/", "-", "&", ":", "="];

    public static EntryReading Finish(EntryDraft draft)
    {
        var parts = draft.Parts.OrderBy(part => part.Start).ToList();
        var rest = new List<string>();
        var text = draft.Text;
        for (int at = 0, before = -1; at < text.Count;)
        {
            var next = before + 1;
            if (next < parts.Count && text[at].Start >= parts[next].Start)
            {
                before++;
                while (at < text.Count && text[at].Start < parts[before].End)
                    at++;
                continue;
            }
            var end = at;
            while (end < text.Count && (next >= parts.Count || text[end].Start < parts[next].Start))
                end++;
            Gap(text, parts, rest, before, at, end);
            at = end;
        }
        if (text.ReadTo < text.Source.Length && text.Source[text.ReadTo..].Trim() is { Length: > 0 } unread)
            rest.Add(unread);
        return new EntryReading { Spec = WithNotes(draft.Spec, rest), Parts = parts, Doubts = [.. draft.Doubts.OrderBy(doubt => doubt.Start)], Rest = rest };
    }

    /// <summary>The tokens between two parts: filling, or a note with the marks at its ends given to its neighbours.</summary>
    private static void Gap(EntryText text, List<EntryPart> parts, List<string> rest, int before, int from, int to)
    {
        var isFilling = parts.Count > 0 && Enumerable.Range(from, to - from).All(at => IsFilling(text, at));
        var (noteFrom, noteTo) = (from, to);
        while (before >= 0 && noteFrom < to && (isFilling || IsMark(text, noteFrom)))
            noteFrom++;
        while (before + 1 < parts.Count && noteTo > noteFrom && (isFilling || text.Is(noteTo - 1, Marks)))
            noteTo--;
        if (noteFrom > from)
            parts[before] = parts[before] with { Length = text[noteFrom - 1].Stop - parts[before].Start };
        if (noteTo < to)
            parts[before + 1] = parts[before + 1] with { Start = text[noteTo].Start, Length = parts[before + 1].End - text[noteTo].Start };
        if (noteTo > noteFrom)
            rest.Add(text.Slice(noteFrom, noteTo));
    }

    /// <summary>A dash before a number may be its sign.</summary>
    private static bool IsMark(EntryText text, int at) => text.Is(at, Marks) && !(text.Is(at, "-") && text[at + 1] is { IsNumber: true, Spaced: false });

    private static bool IsFilling(EntryText text, int at) =>
        text.Is(at, EntryWords.Filler) || text.Is(at, EntryWords.Intake) || text.Is(at, EntryWords.Exhaust) || text.Is(at, EntryWords.Degree);

    private static CamSpec WithNotes(CamSpec spec, List<string> rest) => rest.Count == 0
        ? spec
        : spec with { Notes = string.Join(Between, spec.Notes is { } notes ? [.. rest, notes] : rest) };
}
