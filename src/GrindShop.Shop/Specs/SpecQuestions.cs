using GrindShop.Shop.Engines;

namespace GrindShop.Shop.Specs;

public enum QuestionKind
{
    /// <summary>Without an answer nothing can be judged or ordered.</summary>
    Missing,

    /// <summary>Two things said do not go together, or a figure cannot be right.</summary>
    Contradiction,

    /// <summary>The shop would take its usual value; the customer may know better.</summary>
    WouldHelp,
}

/// <summary>One question to the customer, in words that need no knowledge of the shop's forms.</summary>
/// <param name="Field">Path of the field it is about, as in the JSON.</param>
public sealed record SpecQuestion(string Field, QuestionKind Kind, string Text);

/// <summary>What to ask the customer about a specification: contradictions first, then what is missing, then what would help.</summary>
public static class SpecQuestions
{
    public static IReadOnlyList<SpecQuestion> Of(CamSpec spec, EngineFamily? family)
    {
        var completed = SpecCompletion.Complete(spec, family);
        return
        [
            .. completed.Problems.Select(problem => new SpecQuestion(problem.Field, QuestionKind.Contradiction, ContradictionWords.Ask(problem, spec, family))),
            .. completed.Needed.Concat(completed.NeededToOrder).Select(needed => new SpecQuestion(needed.Field, QuestionKind.Missing, Missing(needed))),
            .. Helpful(spec, family).Where(question => completed.Problems.All(problem => problem.Field != question.Field)),
        ];
    }

    private static string Missing(FieldProblem needed) => needed.Field switch
    {
        "engineFamily" => "Which engine is the camshaft for?",
        "lifter" => "Which lifters will you run: hydraulic roller, solid roller, hydraulic flat tappet or solid flat tappet?",
        "intake.lobeLiftIn" => "How much lift do you want on the intake? Please say whether the figure is at the lobe or at the valve, and with which rocker ratio.",
        "intake.durationAt050CrankDeg" => "What intake duration do you want, in crank degrees counted at .050 in of lifter rise?",
        "side" => "This engine has a left and a right camshaft. Which of the two is this one?",
        _ => needed.Message,
    };

    private static IEnumerable<SpecQuestion> Helpful(CamSpec spec, EngineFamily? family)
    {
        if (spec.RockerRatio is null && (spec.Intake.ValveLiftIn ?? spec.Exhaust.ValveLiftIn) is not null)
            yield return Would("rockerRatio", "Which rocker ratio belongs to the valve lift you gave?");
        if (spec.Exhaust == new LobeWish())
            yield return Would("exhaust", "Should the exhaust lobe be like the intake lobe, or do you want another lift and duration there?");
        if (spec.LobeSeparationCamDeg is null && (spec.IntakeCenterlineCrankDeg is null || spec.AdvanceCrankDeg is null))
            yield return Would("lobeSeparationCamDeg", "Which lobe separation do you want, in cam degrees?" + Usual(family?.UsualLobeSeparationCamDeg));
        if (spec.IntakeCenterlineCrankDeg is null && spec.AdvanceCrankDeg is null)
            yield return Would("intakeCenterlineCrankDeg", "Where should the intake centreline be, or how many crank degrees of advance do you want ground in?");
        if (spec.DistributorGear is null && family is { Gear: not GearPosition.None })
            yield return Would("distributorGear", "What is the gear on your distributor made of: iron, nitrocarburized steel, bronze or polymer composite?");
        if (spec.MechanicalFuelPump is null && family is { FuelPumpLobe: true })
            yield return Would("mechanicalFuelPump", "Do you run a mechanical fuel pump, driven by the camshaft?");
    }

    private static string Usual(double? usual) => usual is { } known ? FormattableString.Invariant($" Without your answer we take {known:0.#}.") : "";

    private static SpecQuestion Would(string field, string text) => new(field, QuestionKind.WouldHelp, text);
}
