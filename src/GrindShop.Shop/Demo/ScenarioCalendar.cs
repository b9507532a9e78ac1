using GrindShop.Shop.Records;

namespace GrindShop.Shop.Demo;

/// <summary>Turns a scenario's days into instants in the shop's working hours. Weekends count as the Friday before, nothing lies ahead of now.</summary>
public sealed class ScenarioCalendar(ShopSettings settings, DateTimeOffset now)
{
    private readonly TimeZoneInfo _zone = TimeZoneInfo.FindSystemTimeZoneById(settings.TimeZone);

    public static readonly TimeOnly StockComes = new(7, 0);
    public static readonly TimeOnly Received = new(8, 0);
    public static readonly TimeOnly Quoted = new(9, 30);
    public static readonly TimeOnly Decided = new(11, 0);
    public static readonly TimeOnly Opened = new(12, 30);

    /// <summary>The later the step on the route, the later in the afternoon: steps of one day stay in order.</summary>
    public static TimeOnly StepDone(int ordinal) => Opened.AddMinutes(20 * ordinal);

    public DateOnly Day(int daysAgo)
    {
        var day = settings.Today(now).AddDays(-daysAgo);
        return day.DayOfWeek switch
        {
            DayOfWeek.Saturday => day.AddDays(-1),
            DayOfWeek.Sunday => day.AddDays(-2),
            _ => day,
        };
    }

    /// <param name="daysAgo">Days before today.</param>
    /// <param name="time">Time of the shop's clock.</param>
    /// <param name="minutes">A few minutes more, so that not everything happens on the stroke.</param>
    public DateTimeOffset At(int daysAgo, TimeOnly time, int minutes = 0)
    {
        var local = Day(daysAgo).ToDateTime(time.AddMinutes(minutes));
        var at = new DateTimeOffset(local, _zone.GetUtcOffset(local)).ToUniversalTime();
        return at < now ? at : now.ToUniversalTime();
    }
}
