namespace GrindShop.Shop.Buying;

/// <summary>How many blanks of a part were wanted in each full week that was watched, the oldest first.</summary>
public sealed record DemandHistory(IReadOnlyList<int> Weeks)
{
    /// <summary>Fewer weeks, or fewer blanks in them, are too little for a variance.</summary>
    public const int LeastWeeks = 8, LeastWanted = 3;

    private const double DaysAWeek = 7, DaysAYear = 365.25;

    public int Wanted => Weeks.Sum();

    public bool IsEnough => Weeks.Count >= LeastWeeks && Wanted >= LeastWanted;

    /// <summary>Blanks a week; from too short a history the mean of its posterior, (wanted + 1/2) / weeks, see <see cref="Over"/>.</summary>
    public double WeeklyMean => IsEnough ? Weeks.Average() : Wanted == 0 ? 0 : (Wanted + .5) / Weeks.Count;

    /// <summary>Sample variance of a week's demand; taken as Poisson where the history is too short.</summary>
    public double WeeklyVariance => IsEnough ? Weeks.Sum(week => Square(week - Weeks.Average())) / (Weeks.Count - 1) : WeeklyMean;

    public double YearlyMean => WeeklyMean * DaysAYear / DaysAWeek;

    /// <summary>
    /// Demand over a lead time. With too short a history the rate is itself uncertain: Poisson with Jeffreys' prior gives a negative binomial demand
    /// of mean m = (wanted + 1/2) / weeks times the lead time and variance m (1 + lead time / weeks) (Box and Tiao, Bayesian Inference; memory).
    /// Where nothing was ever wanted, nothing is expected.
    /// </summary>
    public Demand Over(LeadTime lead)
    {
        var (mean, variance) = (WeeklyMean / DaysAWeek, WeeklyVariance / DaysAWeek);
        if (IsEnough || Wanted == 0)
            return Demand.OverLeadTime(mean, variance, lead.MeanDays, lead.VarianceDays);
        return Demand.OverLeadTime(mean, variance * (1 + lead.MeanDays / DaysAWeek / Weeks.Count), lead.MeanDays, lead.VarianceDays);
    }

    /// <summary>What the figures stand on, in words.</summary>
    public string Words => (Wanted, IsEnough) switch
    {
        (0, _) => $"nothing wanted in {Weeks.Count} weeks",
        (_, true) => $"{Wanted} wanted in {Weeks.Count} weeks",
        _ => $"only {Wanted} wanted in {Weeks.Count} weeks: too little for a variance, so the rate itself is counted as uncertain",
    };

    private static double Square(double value) => value * value;
}
