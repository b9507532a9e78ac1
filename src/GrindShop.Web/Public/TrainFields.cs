using GrindShop.Lobes;
using GrindShop.Shop.Specs;

namespace GrindShop.Web.Public;

/// <summary>Spring, weight and speed as they are typed, with their ranges and example values (from memory, a street engine).</summary>
public static class TrainFields
{
    public static readonly FieldRange Seat = new("Spring load, valve closed", 20, 1000, "lbf");
    public static readonly FieldRange Open = new("Spring load, valve open", 30, 3000, "lbf");
    public static readonly FieldRange Weight = new("Moving weight", .05, 5, "lbf");
    public static readonly FieldRange Speed = new("Engine speed", 0, 12000, "rpm");

    private static readonly (string Path, FieldRange Range)[] All = [("contact.seat", Seat), ("contact.open", Open), ("contact.weight", Weight), ("contact.rpm", Speed)];

    public static SpecDraft Example() => new() { ["contact.seat"] = "130", ["contact.open"] = "330", ["contact.weight"] = "0.9", ["contact.rpm"] = "3000" };

    /// <summary>What is wrong with the texts, field by field.</summary>
    public static IReadOnlyList<FieldProblem> Problems(SpecDraft draft)
    {
        var wrong = All.Where(field => !NumberText.TryRead(draft[field.Path], out var value) || value is null || field.Range.Check(value, field.Path) is not null)
            .Select(field => new FieldProblem(field.Path, field.Range.Sentence)).ToList();
        return wrong.Count == 0 && Number(draft, "contact.open") < Number(draft, "contact.seat")
            ? [new FieldProblem("contact.open", "The spring presses harder open than closed: give at least the load with the valve closed.")]
            : wrong;
    }

    /// <summary>The valve train of texts without problems: the spring's rate follows from its two loads over the valve lift.</summary>
    public static ValveTrain Train(SpecDraft draft, double lobeLiftIn, double rockerRatio, double lashIn)
    {
        var (seat, open) = (Number(draft, "contact.seat"), Number(draft, "contact.open"));
        var valveLiftIn = ValveLift.AtValve(lobeLiftIn, rockerRatio, lashIn);
        return new ValveTrain(seat, Math.Min(10_000, (open - seat) / valveLiftIn), rockerRatio, lashIn, Number(draft, "contact.weight"));
    }

    public static double Rpm(SpecDraft draft) => Number(draft, "contact.rpm");

    private static double Number(SpecDraft draft, string path) => NumberText.TryRead(draft[path], out var value) && value is { } number ? number : 0;
}
