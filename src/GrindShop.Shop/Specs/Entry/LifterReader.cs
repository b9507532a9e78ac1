namespace GrindShop.Shop.Specs.Entry;

/// <summary>The kind of lifter, in one place or said in pieces: hyd roller, HR, solid flat tappet, mechanical roller, "solid … roller".</summary>
internal static class LifterReader
{
    private static readonly Dictionary<string, LifterType> Short = new()
    {
        ["hr"] = LifterType.HydraulicRoller,
        ["sr"] = LifterType.SolidRoller,
        ["hft"] = LifterType.HydraulicFlat,
        ["hf"] = LifterType.HydraulicFlat,
        ["sft"] = LifterType.SolidFlat,
        ["sf"] = LifterType.SolidFlat,
    };

    /// <summary>Words behind which "roller", "solid", "flat" and the like speak of something else.</summary>
    private static readonly HashSet<string> Others =
        ["rocker", "rockers", "bearing", "bearings", "chain", "timing", "top", "tops", "plane", "fuel", "pump", "mount", "mounts", "clutch", "billet", "steel", "wheel", "wheels", "tip", "tips"];

    private static readonly HashSet<string> Joints = ["-", "/", ",", "lifter", "lifters"];
    private static readonly HashSet<string> Tails = ["lifter", "lifters", "tappet", "tappets", "cam", "camshaft", "follower", "followers"];

    public static int Read(EntryDraft draft, int at)
    {
        var text = draft.Text;
        var (hydraulic, roller) = ((bool?)null, (bool?)null);
        var start = text.Is(at, EntryWords.Lifter) ? text.Join(at + 1) : at;
        var to = at;
        for (var word = start; One(text, word) is { } one && !Contrary(hydraulic, one.Hydraulic) && !Contrary(roller, one.Roller); word = Joint(text, to))
            (hydraulic, roller, to) = (hydraulic ?? one.Hydraulic, roller ?? one.Roller, one.Next);
        if (to == at)
            return 0;
        while (text.Is(to, Tails) && !text[to].OpensLine && !text.Is(to + 1, EntryWords.Diameter) && !text.Is(to + 1, EntryWords.Lift))
            to++;
        draft.Lifter.Add(at, to, hydraulic, roller);
        return to - at;
    }

    private static int Joint(EntryText text, int at) => text.Is(at, Joints) && !text[at].OpensLine && One(text, at + 1) is not null ? at + 1 : at;

    private static bool Contrary(bool? one, bool? other) => one is not null && other is not null && one != other;

    private static (bool? Hydraulic, bool? Roller, int Next)? One(EntryText text, int at)
    {
        if (text[at].Kind != TokenKind.Word || text.Is(at + 1, Others))
            return null;
        if (Short.TryGetValue(text[at].Text, out var lifter))
            return (!lifter.IsSolid(), lifter.IsRoller(), at + 1);
        if (text.Phrase(at, "h", "/", "r") is { } hydraulicRoller)
            return (true, true, hydraulicRoller);
        if (text.Phrase(at, "s", "/", "r") is { } solidRoller)
            return (false, true, solidRoller);
        return text.Is(at, EntryWords.Hydraulic) ? (true, null, at + 1)
            : text.Is(at, EntryWords.Solid) ? (false, null, at + 1)
            : text.Is(at, EntryWords.Roller) ? (null, true, at + 1)
            : Flat(text, at) is { } flat ? (null, false, flat) : null;
    }

    private static int? Flat(EntryText text, int at)
    {
        if (text.Is(at, "flattappet") || (text.Is(at, "ft") && (text.Is(at - 1, EntryWords.Hydraulic) || text.Is(at - 1, EntryWords.Solid))))
            return at + 1;
        if (!text.Is(at, "flat"))
            return null;
        var next = text.Is(at + 1, "-") ? at + 2 : at + 1;
        return text[next] is { Text: "tappet" or "tappets" or "foot" or "lifter" or "lifters" } ? next + 1 : at + 1;
    }
}

/// <summary>What was said of the lifter, piece by piece; together the pieces name its kind.</summary>
internal sealed class LifterMarks
{
    private readonly List<(int From, int To, bool? Hydraulic, bool? Roller)> _marks = [];

    public void Add(int from, int to, bool? hydraulic, bool? roller) => _marks.Add((from, to, hydraulic, roller));

    public void Settle(EntryDraft draft)
    {
        if (_marks.Count == 0)
            return;
        var hydraulic = _marks.Select(mark => mark.Hydraulic).OfType<bool>().Distinct().ToList();
        var roller = _marks.Select(mark => mark.Roller).OfType<bool>().Distinct().ToList();
        if (hydraulic is [var isHydraulic] && roller is [var isRoller])
            Take(draft, Of(isHydraulic, isRoller));
        else
            draft.Doubt(_marks[^1].From, _marks[^1].To, Question(hydraulic, roller));
    }

    private void Take(EntryDraft draft, LifterType lifter)
    {
        draft.Spec = draft.Spec with { Lifter = lifter };
        foreach (var mark in _marks)
            draft.Take(mark.From, mark.To, lifter.Words(), "lifter");
    }

    private static string Question(List<bool> hydraulic, List<bool> roller) =>
        hydraulic.Count > 1 || roller.Count > 1 ? "Two kinds of lifter were named. Which one is it?"
        : roller.Count == 0 ? $"Are they {(hydraulic[0] ? "hydraulic" : "solid")} roller lifters or {(hydraulic[0] ? "hydraulic" : "solid")} flat tappets?"
        : $"Are the {(roller[0] ? "roller lifters" : "flat tappets")} hydraulic or solid?";

    private static LifterType Of(bool hydraulic, bool roller) => (hydraulic, roller) switch
    {
        (true, true) => LifterType.HydraulicRoller,
        (false, true) => LifterType.SolidRoller,
        (true, false) => LifterType.HydraulicFlat,
        _ => LifterType.SolidFlat,
    };
}
