using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Starting;

/// <summary>One figure of a starting specification, and how the shop came to it.</summary>
/// <param name="Path">The field of the specification.</param>
public sealed record StartFigure(string Path, FieldRange Range, double Value, IReadOnlyList<string> Reasons);

/// <summary>A specification worked out from answers by the shop's rules of thumb: a point to start from, not a promise.</summary>
public sealed record StartingSpec(CamSpec Spec, IReadOnlyList<StartFigure> Figures)
{
    private const double RoundLiftIn = .005, LeastLiftIn = .150, MostLiftIn = .550;

    /// <summary>Whatever the rules say, a starting point stays within these, crank and cam degrees.</summary>
    private const double LeastCrankDeg = 150, MostCrankDeg = 310, LeastSeparationCamDeg = 96, MostSeparationCamDeg = 122, MostAdvanceCrankDeg = 10;

    public static StartingSpec Of(StartAnswers answers, StartRules rules)
    {
        var use = rules.Uses.First(row => row.Use == answers.Use);
        var idle = rules.Idles.First(row => row.Idle == answers.Idle);
        var lifter = rules.Lifters.First(row => row.Lifter == answers.Lifter);
        var intake = Intake(answers, rules, use, idle, lifter).Round(1).Between(LeastCrankDeg, MostCrankDeg);
        var exhaust = new Sum(intake.Value, $"The intake lobe's {intake.Value:0}")
            .Add(use.ExhaustLongerCrankDeg, Degrees, $"for {answers.Use.Words()}").Round(1).Between(LeastCrankDeg, MostCrankDeg);
        var separation = new Sum(answers.Family.UsualLobeSeparationCamDeg, FormattableString.Invariant($"{answers.Family.UsualLobeSeparationCamDeg:0.#} is usual in this engine"))
            .Add(use.SeparationCamDeg, Wider, $"for {answers.Use.Words()}").Add(idle.SeparationCamDeg, Wider, IdleWords(idle)).Round(.5).Between(LeastSeparationCamDeg, MostSeparationCamDeg);
        var advance = new Sum(answers.Family.UsualAdvanceCrankDeg, FormattableString.Invariant($"{answers.Family.UsualAdvanceCrankDeg:0.#} is usual in this engine"))
            .Add(use.AdvanceCrankDeg, Earlier, $"for {answers.Use.Words()}").Round(.5).Between(-MostAdvanceCrankDeg, MostAdvanceCrankDeg);
        return Of(answers, intake, exhaust, Lift(answers, rules, lifter, intake.Value), Lift(answers, rules, lifter, exhaust.Value), separation, advance);
    }

    private static StartingSpec Of(StartAnswers answers, Sum intake, Sum exhaust, Sum intakeLift, Sum exhaustLift, Sum separation, Sum advance) => new(
        new CamSpec
        {
            EngineFamily = answers.Family.Code,
            Lifter = answers.Lifter,
            Intake = new LobeWish { DurationAt050CrankDeg = intake.Value, LobeLiftIn = intakeLift.Value },
            Exhaust = new LobeWish { DurationAt050CrankDeg = exhaust.Value, LobeLiftIn = exhaustLift.Value },
            LobeSeparationCamDeg = separation.Value,
            AdvanceCrankDeg = advance.Value,
            Use = answers.Sentence,
        },
        [
            new("intake.durationAt050CrankDeg", FieldRange.DurationAt050, intake.Value, intake.Reasons),
            new("intake.lobeLiftIn", FieldRange.LobeLift, intakeLift.Value, intakeLift.Reasons),
            new("exhaust.durationAt050CrankDeg", FieldRange.DurationAt050, exhaust.Value, exhaust.Reasons),
            new("exhaust.lobeLiftIn", FieldRange.LobeLift, exhaustLift.Value, exhaustLift.Reasons),
            new("lobeSeparationCamDeg", FieldRange.LobeSeparation, separation.Value, separation.Reasons),
            new("advanceCrankDeg", FieldRange.Advance, advance.Value, advance.Reasons),
        ]);

    /// <summary>Never shorter for a higher speed: the table and the cap both rise, and the rest does not look at the speed.</summary>
    private static Sum Intake(StartAnswers answers, StartRules rules, UseRow use, IdleRow idle, LifterRow lifter)
    {
        var top = StartRules.Read(rules.Top, answers.ToRpm);
        return new Sum(top, FormattableString.Invariant($"{top:0} for pulling up to {answers.ToRpm:0} rpm"))
            .AtMost(StartRules.Read(rules.Low, answers.FromRpm), most => FormattableString.Invariant($"not more than {most:0}, so that it pulls from {answers.FromRpm:0} rpm"))
            .Add((answers.CubicInchesEach - rules.Cylinder.UsualCubicInches) / 10 * rules.Cylinder.LongerPerTenCrankDeg, Degrees,
                FormattableString.Invariant($"for cylinders of {answers.CubicInchesEach:0.#} cubic inches (the table is for {rules.Cylinder.UsualCubicInches:0.#})"))
            .Add(use.LongerCrankDeg, Degrees, Named($"for {answers.Use.Words()}", use.Why))
            .Add(idle.LongerCrankDeg, Degrees, IdleWords(idle))
            .Add(lifter.LongerCrankDeg, Degrees, Named($"for a {lifter.Lifter.Words()}", lifter.Why));
    }

    private static Sum Lift(StartAnswers answers, StartRules rules, LifterRow lifter, double crankDeg)
    {
        var (share, usual) = (rules.LiftPercent(answers.Family.Code), lifter.LiftAt220In + (crankDeg - 220) * lifter.LiftPerDegreeIn);
        var sum = new Sum(usual, FormattableString.Invariant($"{usual:0.000} goes with {crankDeg:0} degrees on a {lifter.Lifter.Words()}"));
        if (share != 100)
            sum = sum.Times(share / 100, FormattableString.Invariant($"{share:0} percent of it in this engine"));
        if (MostLift(answers) is { } most)
            sum = sum.AtMost(most, lift => FormattableString.Invariant($"not more than {lift:0.000}, so that the lobe passes the bearing bores"));
        return sum.Round(RoundLiftIn).Between(LeastLiftIn, MostLiftIn);
    }

    /// <summary>The nose passes the bearing bores while the base circle keeps its least diameter.</summary>
    private static double? MostLift(StartAnswers answers) => answers.Family.NosePassesBores
        ? Math.Floor((answers.Family.JournalDiametersIn.Min() - answers.Family.NoseClearanceIn - answers.Family.LeastBaseCircleIn) / 2 / RoundLiftIn) * RoundLiftIn
        : null;

    private static string IdleWords(IdleRow idle) => Named($"for a {idle.Idle.Words()} idle", idle.Why);

    private static string Named(string what, string why) => why.Length == 0 ? what : $"{what}: {why.TrimEnd('.')}";

    private static string Degrees(double by) => FormattableString.Invariant($"{Math.Abs(by):0.#} {(by > 0 ? "longer" : "shorter")}");

    private static string Wider(double by) => FormattableString.Invariant($"{Math.Abs(by):0.#} {(by > 0 ? "wider" : "narrower")}");

    private static string Earlier(double by) => FormattableString.Invariant($"{Math.Abs(by):0.#} {(by > 0 ? "earlier" : "later")}");
}
