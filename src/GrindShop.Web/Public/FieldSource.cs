using GrindShop.Shop.Specs;
using GrindShop.Shop.Starting;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Public;

/// <summary>Where the fields of a form take their texts, problems and fillings from, and whom they tell of every keystroke.</summary>
public sealed record FieldSource(SpecDraft Draft, IReadOnlyList<FieldProblem> Problems, IReadOnlyList<FilledField> Filled, EventCallback Changed)
{
    /// <summary>Whether every field says what it means.</summary>
    public bool Explains { get; init; }

    /// <summary>Figures that were worked out as a starting point; marked for as long as they stand unchanged.</summary>
    public IReadOnlyList<StartFigure> Started { get; init; } = [];

    public string? ProblemOf(string path) => Problems.FirstOrDefault(problem => problem.Field == path)?.Message;

    public FilledField? FilledOf(string path) => Filled.FirstOrDefault(filled => filled.Field == path);

    public StartFigure? StartedOf(string path) => Started.FirstOrDefault(figure => figure.Path == path && Draft[path] == NumberText.Write(figure.Value));
}
