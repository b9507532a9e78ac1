namespace GrindShop.Shop.Mail;

/// <summary>When a mail that did not go out is tried again: twice as long each time, four hours at most, given up after some sixteen hours.</summary>
public static class RetryRule
{
    public const int MostAttempts = 12;

    private static readonly TimeSpan First = TimeSpan.FromMinutes(1), Longest = TimeSpan.FromHours(4);

    /// <param name="attempts">How often it has been tried, from 1.</param>
    /// <param name="chance">0 to 1; spreads mails that failed together by a fifth either way.</param>
    /// <returns>The pause before the next attempt, or null where there is none.</returns>
    public static TimeSpan? Pause(int attempts, double chance)
    {
        if (attempts >= MostAttempts)
            return null;
        var doubled = First * Math.Pow(2, Math.Min(attempts - 1, 20));
        return (doubled < Longest ? doubled : Longest) * (0.8 + 0.4 * chance);
    }
}
