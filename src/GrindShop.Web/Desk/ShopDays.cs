namespace GrindShop.Web.Desk;

/// <summary>Times to come that the desk usually means, by the shop's clock.</summary>
public static class ShopDays
{
    private static readonly TimeSpan Opening = TimeSpan.FromHours(8);

    public static IEnumerable<(string Name, DateTime At)> Usual(DateTime now)
    {
        yield return ("tomorrow 8:00", now.Date.AddDays(1) + Opening);
        yield return ("Monday 8:00", now.Date.AddDays(1 + (((int)DayOfWeek.Monday - (int)now.DayOfWeek + 6) % 7)) + Opening);
        yield return ("in a week", now.Date.AddDays(7) + Opening);
    }

    /// <summary>The next full half hour that is at least half an hour away.</summary>
    public static DateTime Soon(DateTime now)
    {
        var half = TimeSpan.FromMinutes(30);
        return now.Date + (Math.Ceiling(now.TimeOfDay / half) + 1) * half;
    }
}
