using GrindShop.Shop.Blanks;

namespace GrindShop.Shop.Buying;

/// <summary>Another blank that could stand in, and how many of the past cams come out of it.</summary>
/// <param name="Terms">Its part and prices.</param>
/// <param name="Served">Past cams that can be ground from it by today's rules.</param>
/// <param name="Of">Past cams that were judged.</param>
public sealed record AlternativeFacts(SupplyTerms Terms, int Served, int Of)
{
    public BlankPart Part => Terms.BlankPart;

    public double ShareServed => Of == 0 ? 0 : Served / (double)Of;

    /// <summary>How it differs from the part that would be milled, in words.</summary>
    public string Against(BlankPart milled) => (Part.CaseDepthIn, milled.CaseDepthIn) switch
    {
        _ when Part.IsSoft => "soft: heat treatment comes on top of the price",
        ({ } depth, { } deeper) when depth < deeper => FormattableString.Invariant($"shallower case, {depth:0.000} in against {deeper:0.000} in"),
        ({ } depth, { } shallower) when depth > shallower => FormattableString.Invariant($"deeper case, {depth:0.000} in against {shallower:0.000} in"),
        _ => $"{Part.Alloy.Words()}, {Part.Form.Words()}",
    };
}

/// <summary>What the shop's own books say about a part that might be milled.</summary>
/// <param name="Need">Its stock, demand, terms and supplier.</param>
/// <param name="PastCams">Cams that were ordered on it.</param>
/// <param name="AveragePrice">What their customers paid for a cam, on average; null where there were none.</param>
/// <param name="Alternatives">Other blanks of the family, those first that serve most.</param>
public sealed record MillRunFacts(PartNeed Need, int PastCams, decimal? AveragePrice, IReadOnlyList<AlternativeFacts> Alternatives)
{
    /// <summary>How much a yearly demand may drift beside what the history leaves uncertain, against its mean; the shop's choice.</summary>
    public const double AssumedDrift = .2;

    private const double WeeksAYear = 365.25 / 7;

    /// <summary>Standard error of the history's yearly mean together with the assumed drift.</summary>
    public double YearlyDeviation
    {
        get
        {
            var history = Need.History;
            var error = history.Weeks.Count == 0 ? 0 : WeeksAYear * Math.Sqrt(history.WeeklyVariance / history.Weeks.Count);
            return Math.Sqrt(error * error + Math.Pow(AssumedDrift * history.YearlyMean, 2));
        }
    }
}
