using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Planning;

/// <summary>
/// What counts against serving a cam from a blank, in dollars or as good as dollars. The shop's own judgement: the owner may set every figure
/// for a plan. The price of the blank itself does not count, because the customer pays it. The usual values are a start without a published source.
/// </summary>
public sealed record ServingWeights
{
    /// <summary>Margin lost with a cam that no blank on the shelf can become.</summary>
    public double LostCam { get; init; } = 250;

    /// <summary>An hour of the grinder.</summary>
    public double GrindingHour { get; init; } = 90;

    /// <summary>Metal taken off in a minute, cubic inches.</summary>
    public double RemovalIn3PerMinute { get; init; } = .15;

    /// <summary>Each thousandth of an inch that the base circle ends below the family's usual one (or below what the engine leaves room for).</summary>
    public double BaseCircleThousandth { get; init; } = .25;

    /// <summary>Each thousandth of an inch of case ground away where most comes off.</summary>
    public double CaseThousandth { get; init; } = .15;

    /// <summary>The heat-treat round of a soft blank.</summary>
    public double HeatTreat { get; init; } = 40;

    /// <summary>Asking the customer to agree to any change at all.</summary>
    public double AnyChange { get; init; } = 25;

    /// <summary>Each crank degree by which a lobe's centreline is moved.</summary>
    public double CenterlineCrankDeg { get; init; } = 10;

    /// <summary>Each crank degree by which a lobe's duration at .050 is changed.</summary>
    public double DurationCrankDeg { get; init; } = 15;

    /// <summary>Furthest a lobe's centreline is moved, crank degrees; moving both apart by this moves the lobe separation by as many cam degrees.</summary>
    public double MostCenterlineCrankDeg { get; init; } = 3;

    /// <summary>The one change of duration that is tried, longer and shorter, crank degrees; 0 tries none.</summary>
    public double MostDurationCrankDeg { get; init; } = 2;

    /// <summary>What is wrong with the figures.</summary>
    public IEnumerable<FieldProblem> Problems() => Figures().Where(figure => !(figure.Value >= figure.Least && figure.Value <= figure.Most))
        .Select(figure => new FieldProblem(figure.Field, FormattableString.Invariant($"{figure.Name} must lie between {figure.Least} and {figure.Most}."), figure.Least, figure.Most));

    private IEnumerable<(string Field, string Name, double Value, double Least, double Most)> Figures() =>
    [
        ("lostCam", "A lost cam", LostCam, 1, 10_000),
        ("grindingHour", "An hour of grinding", GrindingHour, 0, 1_000),
        ("removalIn3PerMinute", "Metal taken off in a minute", RemovalIn3PerMinute, .001, 10),
        ("baseCircleThousandth", "A thousandth of base circle", BaseCircleThousandth, 0, 100),
        ("caseThousandth", "A thousandth of case", CaseThousandth, 0, 100),
        ("heatTreat", "A heat-treat round", HeatTreat, 0, 5_000),
        ("anyChange", "Asking for a change", AnyChange, 0, 5_000),
        ("centerlineCrankDeg", "A degree of centreline", CenterlineCrankDeg, 0, 1_000),
        ("durationCrankDeg", "A degree of duration", DurationCrankDeg, 0, 1_000),
        ("mostCenterlineCrankDeg", "The furthest turn", MostCenterlineCrankDeg, 0, 12),
        ("mostDurationCrankDeg", "The change of duration", MostDurationCrankDeg, 0, 8),
    ];
}
