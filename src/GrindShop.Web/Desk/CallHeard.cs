using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Specs.Entry;

namespace GrindShop.Web.Desk;

/// <summary>What the shop makes of a line so far: how it was read, what to ask next, and the answer where there can be one.</summary>
public sealed record CallHeard(string Line, EntryReading Reading, IReadOnlyList<SpecQuestion> Questions, GrindSpec? Grind)
{
    public FeasibilityAnswer? Answer { get; init; }

    public static CallHeard Of(string line, IReadOnlyList<EngineFamily> families)
    {
        var reading = SpecEntry.Read(line, families);
        var family = families.FirstOrDefault(one => one.Code == reading.Spec.EngineFamily);
        return new CallHeard(line, reading, SpecQuestions.Of(reading.Spec, family), SpecCompletion.Complete(reading.Spec, family).Grind);
    }

    /// <summary>What to ask on the phone, the most urgent first: doubts about what was said, then what is missing, then what would help.</summary>
    public IEnumerable<string> ToAsk => [.. Reading.Doubts.Select(doubt => doubt.Question), .. Questions.Select(question => question.Text)];

    public string Said(EntryPart part) => Line.Substring(part.Start, part.Length).Trim(' ', ',', ';', '\n');
}
