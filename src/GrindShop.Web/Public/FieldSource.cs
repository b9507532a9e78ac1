using GrindShop.Shop.Specs;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Public;

/// <summary>Where the fields of a form take their texts, problems and fillings from, and whom they tell of every keystroke.</summary>
public sealed record FieldSource(SpecDraft Draft, IReadOnlyList<FieldProblem> Problems, IReadOnlyList<FilledField> Filled, EventCallback Changed)
{
    public string? ProblemOf(string path) => Problems.FirstOrDefault(problem => problem.Field == path)?.Message;

    public FilledField? FilledOf(string path) => Filled.FirstOrDefault(filled => filled.Field == path);
}
