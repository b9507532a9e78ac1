using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>A cam as it was looked at: what stands in the way of ordering it, and the shop's answer where there can be one.</summary>
/// <param name="Spec">What is wrong or missing in the specification.</param>
/// <param name="Work">What is wrong or missing in what is said about the work: pieces, condition, measures, gears.</param>
public sealed record CamLook(IReadOnlyList<FieldProblem> Spec, IReadOnlyList<FieldProblem> Work, FeasibilityAnswer? Answer)
{
    public IReadOnlyList<FieldProblem> Problems => [.. Spec.Concat(Work).Distinct()];

    public Refusal? Refusal => Of(Problems);

    /// <summary>The first of these problems as a refusal, or null.</summary>
    public static Refusal? Of(IReadOnlyList<FieldProblem> problems) => problems.Count == 0 ? null : new Refusal("badSpec", problems[0].Message);
}

/// <summary>Looks at a cam that is to be ordered: may it be, and what can the shop say to it?</summary>
public static class CamIntake
{
    public const int MostPieces = 99, LongestCondition = 500;

    /// <summary>Judged with the stock of this moment. A repair has nothing to judge; a regrind is judged where the used cam has been measured.</summary>
    public static async Task<CamLook> LookAsync(this Catalog catalog, CamEntry cam, CancellationToken cancel = default)
    {
        var content = await catalog.ContentAsync(cancel);
        var family = content.Family(cam.Spec.EngineFamily);
        var completed = SpecCompletion.Complete(cam.Spec, family);
        IReadOnlyList<FieldProblem> spec = [.. InTheWay(cam, completed), .. Place(cam, family)];
        IReadOnlyList<FieldProblem> work = [.. Problems(cam, family), .. AgainstMetal(cam, completed.Grind), .. AgainstGear(cam, family, content.Rules)];
        return new CamLook(spec, work, spec.Count + work.Count == 0 ? await AnswerAsync(catalog, cam, completed.Grind, family, cancel) : null);
    }

    private static async Task<FeasibilityAnswer?> AnswerAsync(Catalog catalog, CamEntry cam, GrindSpec? grind, EngineFamily? family, CancellationToken cancel) => (cam.Kind, cam.Measured) switch
    {
        (WorkKind.NewGrind, _) => await catalog.JudgeAsync(grind!, cancel),
        (WorkKind.Regrind, { } measured) => measured.Judge(grind!, family!, (await catalog.ContentAsync(cancel)).Rules),
        _ => null,
    };

    /// <summary>A new gear needs no grind, only the engine.</summary>
    private static IEnumerable<FieldProblem> InTheWay(CamEntry cam, CompletedSpec completed) => cam.Kind != WorkKind.GearReplacement ? completed.InTheWay
        : cam.Spec.EngineFamily is null ? [new FieldProblem("engineFamily", "Choose the engine family.")]
        : completed.Problems;

    private static IEnumerable<FieldProblem> AgainstMetal(CamEntry cam, GrindSpec? grind) =>
        cam is { Kind: WorkKind.Regrind, Measured: { } measured } && grind is not null && !measured.Problems().Any() && measured.Undrawable(grind) is { } undrawable ? [undrawable] : [];

    private static IEnumerable<FieldProblem> AgainstGear(CamEntry cam, EngineFamily? family, ShopRules rules) =>
        cam is { Kind: WorkKind.GearReplacement, Gear: { } gear } && family is not null && gear.Forbidden(family, cam.Spec.DistributorGear, rules) is { } forbidden ? [forbidden] : [];

    /// <summary>What the kind of work asks for beside the specification. Pure.</summary>
    public static IEnumerable<FieldProblem> Problems(CamEntry cam, EngineFamily? family) =>
    [
        .. Pieces(cam),
        .. cam.Kind == WorkKind.NewGrind ? [] : Condition(cam),
        .. cam is { Kind: WorkKind.Regrind, Measured: { } measured } ? measured.Problems() : [],
        .. cam.Kind == WorkKind.GearReplacement ? Gears(cam) : [],
        .. Place(cam, family),
    ];

    /// <summary>Is this problem about the work, not about the specification?</summary>
    public static bool IsOfWork(FieldProblem problem) => problem.Field.Split('.')[0] is "quantity" or "receivedCondition" or "measured" or "gear";

    /// <summary>Why a cam of the customer's cannot be put to work as it came in, or null.</summary>
    public static Refusal? Came(OrderCam cam, string? condition) =>
        cam.IsExpected && string.IsNullOrWhiteSpace(condition) ? new Refusal("notHere", "Say how the cam came in: compare it with what the customer told.")
        : SpecCheck.Text(condition, LongestCondition, "receivedCondition", "The condition") is { } wrong ? new Refusal("badText", wrong.Message)
        : null;

    /// <summary>Why these rules forbid what is to be done to a cam of the customer's, whatever held when it was priced; null where they allow it.</summary>
    public static Refusal? RefuseWork(OrderCam cam, CatalogContent content) => content.Family(cam.Spec.EngineFamily) is not { } family ? null
        : cam.Gear?.Forbidden(family, cam.Spec.DistributorGear, content.Rules) is { } forbidden ? new Refusal("doesNotFit", forbidden.Message)
        : cam is { Measured: { } measured, Answer: { } answer } ? FeasibilityAnswer.Refuse(measured.Judge(answer.Grind, family, content.Rules), MeasuredCam.PartNumber)
        : null;

    private static IEnumerable<FieldProblem> Pieces(CamEntry cam)
    {
        if (cam.Quantity is < 1 or > MostPieces)
            yield return new FieldProblem("quantity", $"Order 1 to {MostPieces} pieces.");
        if (SpecCheck.Text(cam.ReceivedCondition, LongestCondition, "receivedCondition", "Received condition") is { } tooLong)
            yield return tooLong;
    }

    private static IEnumerable<FieldProblem> Condition(CamEntry cam) =>
        string.IsNullOrWhiteSpace(cam.ReceivedCondition) ? [new FieldProblem("receivedCondition", "Say how the cam came in, or is expected: wear, pitting, gear, journals.")] : [];

    private static IEnumerable<FieldProblem> Gears(CamEntry cam) =>
        cam.Gear?.Problems() ?? [new FieldProblem("gear", "Name the cam and its gears: what sits on it and what is to be pressed on.")];

    private static IEnumerable<FieldProblem> Place(CamEntry cam, EngineFamily? family) => cam.Kind == WorkKind.GearReplacement && family is { Gear: not GearPosition.Rear }
        ? [new FieldProblem("engineFamily", $"A gear can only be replaced where it is pressed on at the rear of the cam; {family.Name} has none there.")]
        : [];
}
