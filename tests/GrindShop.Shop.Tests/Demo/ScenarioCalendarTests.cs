using GrindShop.Shop.Demo;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.Tests.Demo;

public class ScenarioCalendarTests
{
    /// <summary>A week of mornings and evenings, the weekend and a change of the clocks among them.</summary>
    public static TheoryData<DateTimeOffset> Nows =>
        [.. Enumerable.Range(0, 14).Select(half => new DateTimeOffset(2026, 3, 5, 10, 0, 0, TimeSpan.Zero).AddHours(12 * half))];

    [Theory]
    [MemberData(nameof(Nows))]
    public void What_comes_later_in_the_files_never_comes_earlier_in_time(DateTimeOffset now)
    {
        var calendar = new ScenarioCalendar(SeedFiles.Scenario.Settings, now);
        TimeOnly[] times =
        [
            ScenarioCalendar.StockComes, ScenarioCalendar.Received, ScenarioCalendar.Quoted, ScenarioCalendar.Decided,
            ScenarioCalendar.Opened, .. Enumerable.Range(1, 8).Select(ScenarioCalendar.StepDone),
        ];

        var instants = times.Select(time => Enumerable.Range(0, 200).Select(day => calendar.At(day, time, 19)).ToList()).ToList();

        Assert.All(instants, days => Assert.Equal(days.OrderDescending(), days));
        Assert.All(Enumerable.Range(0, 200), day => Assert.Equal(instants.Select(days => days[day]).Order(), instants.Select(days => days[day])));
        Assert.All(instants.SelectMany(days => days), at => Assert.True(at <= now));
        Assert.All(Enumerable.Range(0, 200), day => Assert.InRange(calendar.Day(day).DayOfWeek, DayOfWeek.Monday, DayOfWeek.Friday));
    }

    [Fact]
    public void Time_is_the_shops()
    {
        var calendar = new ScenarioCalendar(SeedFiles.Scenario.Settings, new(2026, 7, 1, 20, 0, 0, TimeSpan.Zero));

        Assert.Equal(new DateTimeOffset(2026, 6, 30, 13, 5, 0, TimeSpan.Zero), calendar.At(1, ScenarioCalendar.Received, 5));
        Assert.Equal(new DateTimeOffset(2026, 1, 2, 14, 0, 0, TimeSpan.Zero), calendar.At(180, ScenarioCalendar.Received));
    }
}
