using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Starting;

namespace GrindShop.Web.Public;

/// <summary>What the shop makes of the guided answers so far: the starting specification, or what is wrong and still needed.</summary>
public sealed record StartReading(EngineFamily? Family, StartingSpec? Start, IReadOnlyList<FieldProblem> Problems, IReadOnlyList<FieldProblem> Needed)
{
    public const string Use = "start.use", Displacement = "start.displacement", Unit = "start.unit", From = "start.from", To = "start.to", Idle = "start.idle";

    /// <summary>Set once the figures were put into the form.</summary>
    public const string Taken = "start.taken";

    /// <summary>The unit text for litres; anything else is cubic inches.</summary>
    public const string Litres = "litres";

    private static readonly string[] Numbers = [Displacement, From, To];

    public static readonly StartReading Nothing = new(null, null, [], []);

    public static StartReading Of(SpecDraft draft, CatalogContent content, StartRules? rules)
    {
        var family = content.Family(draft.Text("engineFamily"));
        var (inches, from, to) = (CubicInches(draft), Number(draft, From), Number(draft, To));
        List<FieldProblem> problems = [.. Unreadable(draft), .. StartAnswers.Problems(family, inches, from, to)];
        List<FieldProblem> needed = [.. Missing(draft).Where(need => problems.All(problem => problem.Field != need.Field))];
        var start = problems.Count + needed.Count == 0 && rules is not null && family is not null
            ? StartingSpec.Of(new StartAnswers(family, Choice<LifterType>(draft, "lifter")!.Value, Choice<StartUse>(draft, Use)!.Value, inches!.Value, from!.Value, to!.Value, Choice<IdleWish>(draft, Idle)!.Value), rules)
            : null;
        return new StartReading(family, start, problems, needed);
    }

    /// <summary>The range of the displacement in the unit that was chosen.</summary>
    public static FieldRange Range(SpecDraft draft, EngineFamily? family)
    {
        var (least, most) = (StartAnswers.Cylinder.Least * (family?.Cylinders ?? 2), StartAnswers.Cylinder.Most * (family?.Cylinders ?? 16));
        return draft[Unit] == Litres
            ? new FieldRange("Displacement", Math.Round(least / StartAnswers.CubicInchesPerLitre, 1), Math.Round(most / StartAnswers.CubicInchesPerLitre, 1), Litres)
            : new FieldRange("Displacement", least, most, "cubic inches");
    }

    private static double? CubicInches(SpecDraft draft) => Number(draft, Displacement) * (draft[Unit] == Litres ? StartAnswers.CubicInchesPerLitre : 1);

    private static IEnumerable<FieldProblem> Unreadable(SpecDraft draft) =>
        from path in Numbers where !NumberText.TryRead(draft[path], out _) select new FieldProblem(path, $"\"{draft[path].Trim()}\" is not a number.");

    private static IEnumerable<FieldProblem> Missing(SpecDraft draft)
    {
        FieldProblem?[] missing =
        [
            draft.Text("engineFamily") is null ? new("engineFamily", "Choose the engine family.") : null,
            Choice<LifterType>(draft, "lifter") is null ? new("lifter", "Choose the kind of lifter.") : null,
            Choice<StartUse>(draft, Use) is null ? new(Use, "Say what the engine is for.") : null,
            draft.Text(Displacement) is null ? new(Displacement, "Give the displacement.") : null,
            draft.Text(From) is null ? new(From, "Give the speed from which it should pull.") : null,
            draft.Text(To) is null ? new(To, "Give the highest speed at which it should pull.") : null,
            Choice<IdleWish>(draft, Idle) is null ? new(Idle, "Say how it may idle.") : null,
        ];
        return missing.OfType<FieldProblem>();
    }

    private static double? Number(SpecDraft draft, string path) => NumberText.TryRead(draft[path], out var value) ? value : null;

    private static T? Choice<T>(SpecDraft draft, string path)
        where T : struct, Enum => Enum.TryParse<T>(draft[path], out var value) && Enum.IsDefined(value) ? value : null;
}
