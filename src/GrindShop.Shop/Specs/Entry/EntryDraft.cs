using GrindShop.Shop.Engines;

namespace GrindShop.Shop.Specs.Entry;

/// <summary>The specification while a text is being read: what is understood so far, what is doubtful, and which lobe the line speaks of.</summary>
internal sealed class EntryDraft(EntryText text, IReadOnlyList<EngineFamily> families)
{
    public EntryText Text { get; } = text;

    public IReadOnlyList<EngineFamily> Families { get; } = families;

    public CamSpec Spec { get; set; } = new();

    public EngineFamily? Family { get; set; }

    public List<EntryPart> Parts { get; } = [];

    public List<EntryDoubt> Doubts { get; } = [];

    /// <summary>Durations and lifts of which only the rest of the text tells the kind.</summary>
    public List<BarePair> Durations { get; } = [];

    public List<BarePair> Lifts { get; } = [];

    public LobeContext Context { get; } = new();

    /// <summary>What can only be settled when all is read: swaps of cylinders, sides, kinds of lifter, exhaust centrelines.</summary>
    public List<Action> Later { get; } = [];

    public LifterMarks Lifter { get; } = new();

    public void Take(int from, int to, string words, params string[] fields) =>
        Parts.Add(new EntryPart(Text[from].Start, Text[to - 1].Stop - Text[from].Start, fields, words));

    public void Doubt(int from, int to, string question) =>
        Doubts.Add(new EntryDoubt(Text[from].Start, Text[to - 1].Stop - Text[from].Start, question));

    /// <summary>A figure of the cam; where another one stands already it is doubted and left in the notes.</summary>
    public bool Take(int from, int to, CamField field, double value)
    {
        if (field.Get(Spec) is { } there && there != value)
        {
            Doubt(from, to, $"Two figures were given for the {field.Words}: {field.Say(there)} and {field.Say(value)}. Which is right?");
            return false;
        }
        Spec = field.Set(Spec, value);
        Take(from, to, $"{field.Words} {field.Say(value)}", field.Path);
        return true;
    }

    /// <summary>A choice of the cam, such as the distributor gear.</summary>
    public bool Take<T>(int from, int to, string field, string name, T? there, T value, Func<T, string> say, Func<CamSpec, T, CamSpec> set)
        where T : struct
    {
        if (there is { } known && !known.Equals(value))
        {
            Doubt(from, to, $"Two answers were given for the {name}: {say(known)} and {say(value)}. Which is right?");
            return false;
        }
        Spec = set(Spec, value);
        Take(from, to, $"{name} {say(value)}", field);
        return true;
    }
}
