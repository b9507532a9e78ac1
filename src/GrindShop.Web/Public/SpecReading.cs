using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Web.Public;

/// <summary>What the shop makes of a draft: its specification, what is wrong or still needed, and what the shop filled in.</summary>
public sealed record SpecReading(CamSpec Spec, EngineFamily? Family, CompletedSpec Completed)
{
    public static readonly SpecReading Nothing = new(new CamSpec(), null, new CompletedSpec(null, [], [], []));

    public GrindSpec? Grind => Completed.Grind;

    public static SpecReading Of(SpecDraft draft, CatalogContent content)
    {
        var family = content.Family(draft.Text("engineFamily"));
        var spec = Asked(draft.ToSpec(), family);
        return new SpecReading(spec, family, With(SpecCompletion.Complete(spec, family), [.. draft.Unreadable()]));
    }

    /// <summary>A number that cannot be read is no blank: the shop must not fill it.</summary>
    private static CompletedSpec With(CompletedSpec completed, IReadOnlyList<FieldProblem> unreadable) => unreadable.Count == 0
        ? completed
        : new CompletedSpec(null, [], [.. unreadable, .. completed.Problems], [.. Still(completed.Needed, unreadable)]) { NeededToOrder = completed.NeededToOrder };

    /// <summary>Without the answers to questions that are not asked for this engine and lifter: they are hidden, and must not stand in the way.</summary>
    private static CamSpec Asked(CamSpec spec, EngineFamily? family)
    {
        if (family is { HasSides: false })
            spec = spec with { Side = null };
        if (family is { Gear: GearPosition.None })
            spec = spec with { DistributorGear = null };
        return spec.Lifter is { } lifter && !lifter.IsSolid()
            ? spec with { Intake = spec.Intake with { LashIn = null }, Exhaust = spec.Exhaust with { LashIn = null } }
            : spec;
    }

    private static IEnumerable<FieldProblem> Still(IEnumerable<FieldProblem> needed, IReadOnlyList<FieldProblem> unreadable) =>
        needed.Where(need => unreadable.All(problem => problem.Field != need.Field));
}
