using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Starting;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Public;

public sealed partial class SpecFields
{
    internal static readonly IReadOnlyList<(string, string)> Lifters = [.. Enum.GetValues<LifterType>().Select(lifter => (lifter.ToString(), Capital(lifter.Words())))];
    internal static readonly IReadOnlyList<(string, string)> Gears = [.. Enum.GetValues<DistributorGear>().Select(gear => (gear.ToString(), Capital(gear.Words())))];
    internal static readonly IReadOnlyList<(string, string)> Sides = [.. Enum.GetValues<CamSide>().Select(side => (side.ToString(), side.ToString()))];

    internal static readonly IReadOnlyList<(string, string)> YesNo = [(SpecDraft.Yes, "Yes"), (SpecDraft.No, "No")];

    private FieldSource _source = default!;

    /// <summary>The texts being typed; the component writes into it.</summary>
    [Parameter, EditorRequired]
    public SpecDraft Draft { get; set; } = default!;

    /// <summary>What the shop makes of the draft so far.</summary>
    [Parameter, EditorRequired]
    public SpecReading Reading { get; set; } = SpecReading.Nothing;

    [Parameter, EditorRequired]
    public IReadOnlyList<EngineFamily> Families { get; set; } = [];

    /// <summary>Problems to show beside those of the reading, such as fields that are needed before it can be sent.</summary>
    [Parameter]
    public IReadOnlyList<FieldProblem> MoreProblems { get; set; } = [];

    /// <summary>Whether use and notes are asked too; they change no geometry.</summary>
    [Parameter]
    public bool AsksPurpose { get; set; } = true;

    /// <summary>Whether every field says what it means.</summary>
    [Parameter]
    public bool Explains { get; set; }

    /// <summary>Figures that were worked out as a starting point.</summary>
    [Parameter]
    public IReadOnlyList<StartFigure> Started { get; set; } = [];

    /// <summary>Every keystroke and choice.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    private string FiringOrderHint => Reading.Family is { OtherFiringOrders: { Length: > 0 } others }
        ? $"Leave it empty for the usual one. Also ground: {string.Join(", ", others)}."
        : "Leave it empty for the usual one.";

    protected override void OnParametersSet() => _source = new FieldSource(Draft, [.. Reading.Completed.Problems, .. MoreProblems], Reading.Completed.Filled, Changed) { Explains = Explains, Started = Started };

    private IEnumerable<NumberField> Asked(IEnumerable<NumberField> fields) =>
        fields.Where(field => !field.IsLash || Reading.Spec.Lifter is { } lifter && lifter.IsSolid());

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
