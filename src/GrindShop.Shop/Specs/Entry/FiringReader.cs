using GrindShop.Lobes;

namespace GrindShop.Shop.Specs.Entry;

/// <summary>Firing orders: 18436572, 1-8-4-3-6-5-7-2, 1 5 3 6 2 4, and two cylinders swapped: 4/7 swap.</summary>
internal static class FiringReader
{
    private const int LeastCylinders = 4, MostCylinders = 16;

    public static int Read(EntryDraft draft, int at)
    {
        var text = draft.Text;
        var label = Label(text, at);
        var from = text.Join(label ?? at);
        if (Chain(text, from, label is null ? LeastCylinders : 2) is { } chain)
            return Take(draft, at, chain.Next, chain.Cylinders);
        return label is null ? Swap(draft, at) : 0;
    }

    private static int? Label(EntryText text, int at) =>
        text.Phrase(at, "firing", "order") ?? text.Phrase(at, "fo") ?? text.Phrase(at, "f", ".", "o", ".") ?? text.Phrase(at, "firing");

    private static int Take(EntryDraft draft, int from, int to, List<int> cylinders)
    {
        if (FiringOrder.Of(cylinders, cylinders.Count).Problem is { } problem)
            draft.Doubt(from, to, $"This looks like a firing order, but: {problem} In which order do the cylinders fire?");
        else if (draft.Spec.FiringOrder is { } there && there != string.Join('-', cylinders))
            draft.Doubt(from, to, $"Two firing orders were given: {there} and {string.Join('-', cylinders)}. Which is right?");
        else
        {
            draft.Spec = draft.Spec with { FiringOrder = string.Join('-', cylinders) };
            draft.Take(from, to, $"firing order {draft.Spec.FiringOrder}", "firingOrder");
        }
        return to - from;
    }

    private static (List<int> Cylinders, int Next)? Chain(EntryText text, int at, int least)
    {
        if (text[at] is { IsWhole: true, Length: >= LeastCylinders and <= 9 } together && IsPermutation([.. together.Text.Select(digit => digit - '0')]))
            return ([.. together.Text.Select(digit => digit - '0')], at + 1);
        if (!IsCylinder(text[at]) || text[at - 1] is { Text: "/" or "-" or "," })
            return null;
        var joint = text[at + 1] is { Text: "-" or "," or "/" } mark ? mark.Text : "";
        var cylinders = new List<int> { (int)text[at].Value };
        var next = at + 1;
        while (cylinders.Count < MostCylinders && (joint.Length == 0 || text.Is(next, joint)) && IsCylinder(text[next + joint.Length]) && !text[next].OpensLine)
        {
            cylinders.Add((int)text[next + joint.Length].Value);
            next += joint.Length + 1;
        }
        return cylinders.Count >= least ? (cylinders, next) : null;
    }

    private static bool IsPermutation(List<int> cylinders) => FiringOrder.Of(cylinders, cylinders.Count).Succeeded;

    private static bool IsCylinder(Token token) => token is { IsWhole: true, Length: <= 2, Value: >= 1 and <= MostCylinders };

    private static int Swap(EntryDraft draft, int at)
    {
        if (draft.Text.Is(at, EntryWords.Swap) && Two(draft.Text, at + 1) is { } behind)
            return Later(draft, at, behind.Next, behind.One, behind.Other);
        if (Two(draft.Text, at) is not { } two)
            return 0;
        var to = draft.Text.Phrase(two.Next, "firing", "order") ?? (draft.Text[two.Next] is { Text: "cylinder" or "cyl" or "cylinders" } ? two.Next + 1 : two.Next);
        return draft.Text.Is(to, EntryWords.Swap) ? Later(draft, at, to + 1, two.One, two.Other) : 0;
    }

    private static (int One, int Other, int Next)? Two(EntryText text, int one)
    {
        if (text[one] is { IsWhole: true, Length: 2 } both && both.Text[0] != both.Text[1] && text.Is(one + 1, EntryWords.Swap))
            return (both.Text[0] - '0', both.Text[1] - '0', one + 1);
        return IsCylinder(text[one]) && text[one + 1] is { Text: "/" or "-" or "&" or "and" or "," or "with" } && IsCylinder(text[one + 2])
            ? ((int)text[one].Value, (int)text[one + 2].Value, one + 3)
            : null;
    }

    private static int Later(EntryDraft draft, int from, int to, int one, int other)
    {
        draft.Later.Add(() => Settle(draft, from, to, one, other));
        return to - from;
    }

    /// <summary>The family's usual order with the two exchanged.</summary>
    private static void Settle(EntryDraft draft, int from, int to, int one, int other)
    {
        if (draft.Family is not { } family)
            draft.Doubt(from, to, $"Cylinders {one} and {other} are swapped: of which engine's firing order?");
        else if (one == other || Math.Max(one, other) > family.Cylinders || one < 1 || other < 1)
            draft.Doubt(from, to, $"This engine has cylinders 1 to {family.Cylinders}. Which two are swapped?");
        else
            Take(draft, from, to, [.. FiringOrder.Parse(family.FiringOrder, family.Cylinders).Required().Swapped(one, other).Cylinders]);
    }
}
