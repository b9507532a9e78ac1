using GrindShop.Shop.Specs;

namespace GrindShop.Web.Api;

/// <summary>The wrong fields of one request, in the order in which they were found.</summary>
internal sealed class FieldProblems
{
    private readonly List<FieldProblem> _problems = [];

    public bool Any => _problems.Count > 0;

    public void Add(string field, string message) => _problems.Add(new FieldProblem(field, message));

    public void AddRange(IEnumerable<FieldProblem> problems) => _problems.AddRange(problems);

    /// <summary>400 with RFC 9457 problem details: each wrong field with what is wrong and the allowed range.</summary>
    public IResult ToResult() => Results.ValidationProblem(
        _problems.GroupBy(problem => problem.Field).ToDictionary(field => field.Key, field => field.Select(problem => problem.Message).Distinct().ToArray()),
        detail: "Fields are missing or out of range; errors names each of them.",
        title: "The request cannot be computed.",
        type: "https://www.rfc-editor.org/rfc/rfc9110#section-15.5.1");
}
