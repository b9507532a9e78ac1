using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Web.Api;

internal sealed record BlankFitResponse(
    string PartNumber, bool InStock, bool Fits, double? IntakeBaseCircleDiameterIn, double? ExhaustBaseCircleDiameterIn, double? MinRemovalIn, double? MaxRemovalIn,
    double? LeastCaseLeftIn, GearAdvice Gear, IReadOnlyList<RuleAdvice> Cautions, IReadOnlyList<string> Reasons);

internal sealed record FeasibilityResponse(
    Verdict Verdict, IReadOnlyList<string> Reasons, IReadOnlyList<BlankFitResponse> Blanks, IReadOnlyList<FilledField> FilledByShop, IReadOnlyList<NearestResponse> Nearest);

/// <summary>POST feasibility: from which blanks can this cam be ground, best first?</summary>
internal static class FeasibilityEndpoint
{
    public static async Task<IResult> AnswerAsync(HttpRequest http, Catalog catalog, CancellationToken cancel)
    {
        var problems = new FieldProblems();
        if (await RequestReader.ReadAsync<SpecFields>(http, problems) is not { } fields)
            return problems.ToResult();
        Demand(fields, problems);
        var spec = fields.ToSpec(problems);
        var completed = await catalog.CompleteAsync(spec, cancel);
        problems.AddRange(completed.Problems.Concat(completed.Needed).Select(SpecFields.Rename));
        if (problems.Any || completed.Grind is not { } grind)
            return problems.ToResult();
        var answer = await catalog.JudgeAsync(grind, cancel);
        return Results.Ok(Answer(answer, completed.Filled, await catalog.NearestAsync(answer, cancel)));
    }

    /// <summary>What a program must say outright, though the shop could guess it.</summary>
    private static void Demand(SpecFields fields, FieldProblems problems)
    {
        (object? Value, string Field)[] demanded =
        [
            (fields.Follower, "follower"), (fields.Exhaust?.Lobe, "exhaust.lobe"), (fields.LobeSeparationCamDeg, "lobeSeparationCamDeg"), (fields.IntakeCenterlineCrankDeg, "intakeCenterlineCrankDeg"),
        ];
        foreach (var (value, field) in demanded)
            if (value is null)
                problems.Add(field, $"{field} is required.");
        if (fields.Follower is { Kind: "roller", RadiusIn: null })
            problems.Add("follower.radiusIn", "radiusIn is required for a roller, between 0.15 and 1 in.");
    }

    private static FeasibilityResponse Answer(FeasibilityAnswer answer, IReadOnlyList<FilledField> filled, IReadOnlyList<NearestGrind> nearest) =>
        new(answer.Verdict, answer.Reasons, [.. answer.Blanks.Select(Fit)], filled, [.. nearest.Select(NearestResponse.Of)]);

    private static BlankFitResponse Fit(BlankFit fit) => new(
        fit.PartNumber, fit.InStock, fit.Fits, fit.IntakeBaseCircleDiameterIn, fit.ExhaustBaseCircleDiameterIn, fit.MinRemovalIn, fit.MaxRemovalIn, fit.LeastCaseLeftIn, fit.Gear, fit.Cautions, fit.Reasons);
}
