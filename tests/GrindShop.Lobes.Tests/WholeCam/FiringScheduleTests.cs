namespace GrindShop.Lobes.Tests;

public class FiringScheduleTests
{
    private static readonly FiringOrder Six = FiringOrder.Parse("1-2-3-4-5-6", 6).Required();

    [Fact]
    public void Even_fire_spaces_the_cylinders_equally()
    {
        var schedule = FiringSchedule.EvenFire(FiringOrder.Parse("1-8-4-3-6-5-7-2", 8).Required());
        Assert.True(schedule.IsEvenFire);
        Assert.Equal([0, 90, 180, 270, 360, 450, 540, 630],
            schedule.Order.Cylinders.Select(cylinder => schedule.FiresAt(cylinder).Value));
    }

    // A six on three throws with banks 90 apart fires 90 and 150 crank degrees apart by turns (follows from the geometry).
    [Fact]
    public void Odd_fire_takes_its_own_intervals()
    {
        var schedule = FiringSchedule.OddFire(Six, [90, 150, 90, 150, 90, 150]).Required();
        Assert.False(schedule.IsEvenFire);
        Assert.Equal([0, 90, 240, 330, 480, 570], Six.Cylinders.Select(cylinder => schedule.FiresAt(cylinder).Value));
        Assert.Empty(schedule.Companions);
    }

    [Fact]
    public void Companions_fire_a_turn_of_the_crank_apart() =>
        Assert.Equal([(1, 4), (2, 5), (3, 6)], FiringSchedule.EvenFire(Six).Companions);

    [Fact]
    public void Intervals_must_be_as_many_as_cylinders_and_close()
    {
        Assert.Equal(new CamLayoutProblem.WrongIntervalCount(2, 6), FiringSchedule.OddFire(Six, [360, 360]).Problem);
        Assert.Equal(new CamLayoutProblem.IntervalsDoNotClose(540), FiringSchedule.OddFire(Six, [90, 90, 90, 90, 90, 90]).Problem);
        Assert.Throws<ArgumentOutOfRangeException>("intervalsCrankDeg", () => FiringSchedule.OddFire(Six, [double.NaN]));
    }
}
