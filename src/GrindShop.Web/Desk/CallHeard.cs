using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Specs.Entry;

namespace GrindShop.Web.Desk;

/// <summary>What the shop makes of a call so far: how it was read, what to ask next, and the answer where there can be one.</summary>
public sealed record CallHeard(string Line, EntryReading Reading, CamEntry Cam, EngineFamily? Family, IReadOnlyList<SpecQuestion> Questions, GrindSpec? Grind)
{
    public FeasibilityAnswer? Answer { get; init; }

    /// <summary>A new cam is judged on the shop's blanks, a regrind on the metal that was measured, a new gear not at all.</summary>
    public bool CanBeJudged => Grind is not null && (Cam.Kind == WorkKind.NewGrind || Cam is { Kind: WorkKind.Regrind, Measured: not null });

    public static CallHeard Of(CallDraft draft, IReadOnlyList<EngineFamily> families)
    {
        var line = draft.Readable();
        var reading = SpecEntry.Read(line, families);
        var cam = draft.Cam(reading);
        var family = families.FirstOrDefault(one => one.Code == cam.Spec.EngineFamily);
        return new CallHeard(line, reading, cam, family, WorkQuestions.Of(cam, family), SpecCompletion.Complete(cam.Spec, family).Grind);
    }

    /// <summary>The same question to the judge as this one.</summary>
    public bool AsksLike(CallHeard other) => CanBeJudged && (Grind, Cam.Kind, Cam.Measured) == (other.Grind, other.Cam.Kind, other.Cam.Measured);

    /// <summary>What to ask on the phone, the most urgent first: doubts about what was said, then what is missing, then what would help.</summary>
    public IEnumerable<string> ToAsk => [.. Reading.Doubts.Select(doubt => doubt.Question), .. Questions.Select(question => question.Text)];

    public string Said(EntryPart part) => Line.Substring(part.Start, part.Length).Trim(' ', ',', ';', '\n');
}
