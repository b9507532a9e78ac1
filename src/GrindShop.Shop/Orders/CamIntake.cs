using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>A cam as it was looked at: what stands in the way of ordering it, and the shop's answer where there can be one.</summary>
public sealed record CamLook(IReadOnlyList<FieldProblem> Problems, FeasibilityAnswer? Answer)
{
    public Refusal? Refusal => Problems.Count == 0 ? null : new Refusal("badSpec", Problems[0].Message);
}

/// <summary>Looks at a cam that is to be ordered: may it be, and what can the shop say to it?</summary>
public static class CamIntake
{
    public const int MostPieces = 99, LongestCondition = 500;

    /// <summary>Judged with the stock of this moment. A repair has nothing to judge; a regrind is judged where the used cam has been measured.</summary>
    public static async Task<CamLook> LookAsync(this Catalog catalog, CamEntry cam, CancellationToken cancel = default)
    {
        var family = (await catalog.ContentAsync(cancel)).Family(cam.Spec.EngineFamily);
        var completed = SpecCompletion.Complete(cam.Spec, family);
        IReadOnlyList<FieldProblem> problems = [.. InTheWay(cam, completed), .. Problems(cam, family)];
        if (problems.Count == 0 && cam is { Kind: WorkKind.Regrind, Measured: { } measured } && measured.Undrawable(completed.Grind!) is { } undrawable)
            problems = [undrawable];
        return new CamLook(problems, problems.Count == 0 ? await AnswerAsync(catalog, cam, completed.Grind, family, cancel) : null);
    }

    private static async Task<FeasibilityAnswer?> AnswerAsync(Catalog catalog, CamEntry cam, GrindSpec? grind, EngineFamily? family, CancellationToken cancel) => (cam.Kind, cam.Measured) switch
    {
        (WorkKind.NewGrind, _) => await catalog.JudgeAsync(grind!, cancel),
        (WorkKind.Regrind, { } measured) => measured.Judge(grind!, family!, (await catalog.ContentAsync(cancel)).Rules),
        _ => null,
    };

    /// <summary>A new gear needs no grind, only the engine.</summary>
    private static IEnumerable<FieldProblem> InTheWay(CamEntry cam, CompletedSpec completed) => cam.Kind == WorkKind.GearReplacement ? completed.Problems : completed.InTheWay;

    /// <summary>What the kind of work asks for beside the specification. Pure.</summary>
    public static IEnumerable<FieldProblem> Problems(CamEntry cam, EngineFamily? family)
    {
        if (cam.Quantity is < 1 or > MostPieces)
            yield return new FieldProblem("quantity", $"Order 1 to {MostPieces} pieces.");
        if (SpecCheck.Text(cam.ReceivedCondition, LongestCondition, "receivedCondition", "Received condition") is { } tooLong)
            yield return tooLong;
        if (cam.Kind == WorkKind.NewGrind)
            yield break;
        foreach (var problem in cam.Kind == WorkKind.Regrind && cam.Measured is { } measured ? measured.Problems() : [])
            yield return problem;
        if (string.IsNullOrWhiteSpace(cam.ReceivedCondition))
            yield return new FieldProblem("receivedCondition", "Say how the cam came in: wear, pitting, gear, journals.");
        if (cam.Kind == WorkKind.GearReplacement && family is null)
            yield return new FieldProblem("engineFamily", "Choose the engine family.");
        if (cam.Kind == WorkKind.GearReplacement && family is { Gear: not GearPosition.Rear })
            yield return new FieldProblem("engineFamily", $"A gear can only be replaced where it is pressed on at the rear of the cam; {family.Name} has none there.");
    }
}
