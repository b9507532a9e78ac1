using System.Globalization;
using GrindShop.Shop;
using GrindShop.Shop.Planning;

namespace GrindShop.Web.Office;

/// <summary>One figure of the serving costs as it is typed.</summary>
public sealed class WeightField(string id, string label, string hint, double value)
{
    public string Id { get; } = id;

    public string Label { get; } = label;

    public string Hint { get; } = hint;

    public string Text { get; set; } = value.ToString("0.###", CultureInfo.InvariantCulture);
}

/// <summary>One use of cams and how much of it is expected, as typed; 1 means as much as in the period.</summary>
public sealed class GrowthField(string use, int cams)
{
    public string Use { get; } = use;

    public int Cams { get; } = cams;

    public string Text { get; set; } = "1";
}

/// <summary>What a shelf plan assumes, as the owner types it.</summary>
public sealed class ShelfForm
{
    private const double MostGrowth = 20;

    private static readonly ServingWeights Usual = new();

    public IReadOnlyList<WeightField> Weights { get; } =
    [
        new("lost", "A lost cam, $", "margin gone when no blank on the shelf can become it", Usual.LostCam),
        new("hour", "An hour of grinding, $", "with the minutes estimated from the metal that comes off", Usual.GrindingHour),
        new("rate", "Metal off in a minute, cubic in", "mean removal times the round of the lobes times their width", Usual.RemovalIn3PerMinute),
        new("base", "A thousandth of base circle given up, $", "below the family's usual one or what the engine leaves room for", Usual.BaseCircleThousandth),
        new("case", "A thousandth of case ground away, $", "where most comes off", Usual.CaseThousandth),
        new("heat", "A heat-treat round, $", "soft blanks only", Usual.HeatTreat),
        new("ask", "Asking for a change, $", "any change the customer must agree to", Usual.AnyChange),
        new("centre", "A degree of centreline, $", "each crank degree a lobe is moved from the wish", Usual.CenterlineCrankDeg),
        new("duration", "A degree of duration, $", "each crank degree a lobe is made longer or shorter at .050", Usual.DurationCrankDeg),
        new("turn", "Furthest move of a lobe, crank deg", "both apart by 3 move the lobe separation by 3 cam degrees", Usual.MostCenterlineCrankDeg),
        new("longer", "Change of duration tried, crank deg", "once longer and once shorter; 0 tries none", Usual.MostDurationCrankDeg),
    ];

    public IReadOnlyList<GrowthField> Growth { get; private set; } = [];

    /// <summary>What was typed for a use stays while the use is still there.</summary>
    public void Take(ShelfHistory history) => Growth = [.. history.Uses.Select(use => new GrowthField(use.Use, use.Cams) { Text = Growth.FirstOrDefault(known => known.Use == use.Use)?.Text ?? "1" })];

    public Outcome<(ServingWeights Weights, IReadOnlyDictionary<string, double> Growth)> Read()
    {
        var read = new FigureReader();
        var figures = Weights.Select(field => read.Number(field.Text, $"figure \"{field.Label}\"")).ToList();
        var growth = Growth.ToDictionary(field => field.Use, field => read.Number(field.Text, $"growth of {field.Use}"));
        var weights = new ServingWeights
        {
            LostCam = figures[0],
            GrindingHour = figures[1],
            RemovalIn3PerMinute = figures[2],
            BaseCircleThousandth = figures[3],
            CaseThousandth = figures[4],
            HeatTreat = figures[5],
            AnyChange = figures[6],
            CenterlineCrankDeg = figures[7],
            DurationCrankDeg = figures[8],
            MostCenterlineCrankDeg = figures[9],
            MostDurationCrankDeg = figures[10],
        };
        return (read.Refusal ?? Refuse(weights, growth)) is { } refusal ? refusal : (weights, growth);
    }

    private static Refusal? Refuse(ServingWeights weights, Dictionary<string, double> growth) =>
        weights.Problems().FirstOrDefault() is { } problem ? new Refusal("outOfRange", problem.Message)
        : growth.FirstOrDefault(use => use.Value is < 0 or > MostGrowth) is { Key: not null } use ? new Refusal("outOfRange", $"The growth of {use.Key} must lie between 0 and {MostGrowth}.")
        : null;
}
