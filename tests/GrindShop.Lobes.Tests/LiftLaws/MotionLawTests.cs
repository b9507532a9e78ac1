namespace GrindShop.Lobes.Tests;

/// <summary>
/// Peak factors of the handbook motion laws (units h/b and h/b^2), exact from their formulas; R. L. Norton, Design of Machinery,
/// prints 1.875 and 5.777 (3-4-5), 2.188 and 7.526 (4-5-6-7) (from memory). Run through tables, as a measured master would be.
/// </summary>
public class MotionLawTests
{
    public static TheoryData<string, double, double, double?> Laws => new()
    {
        { nameof(RiseLaw.Harmonic), Math.PI / 2, Math.PI * Math.PI / 2, .146446609407 },
        { nameof(RiseLaw.Cycloidal), 2, Math.Tau, .0908450569081 },
        { nameof(RiseLaw.ModifiedSine), 4 * Math.PI / (4 + Math.PI), 5.527957, null },
        { nameof(RiseLaw.ModifiedTrapezoid), 2, 8 * Math.PI / (2 + Math.PI), null },
        { nameof(RiseLaw.Polynomial345), 15.0 / 8, 10 / Math.Sqrt(3), .103515625 },
        { nameof(RiseLaw.Polynomial4567), 35.0 / 16, 84 * Math.Sqrt(5) / 25, .070556640625 },
    };

    [Theory]
    [MemberData(nameof(Laws))]
    public void Peaks_are_the_published_factors(string name, double velocity, double acceleration, double? quarter)
    {
        const double lift = 0.4, rise = 1.2;
        var law = new RiseLaw(lift, rise, Rise(name));
        var peak = Enumerable.Range(1, 11_999).Max(i => law.At(-rise + rise * i / 12_000).AccelerationInPerRad2);

        Assert.Equal(velocity, law.MaxVelocityInPerRad * rise / lift, 1e-8);
        Assert.Equal(acceleration, peak * rise * rise / lift, acceleration * 1e-5 + 0.002);
        Assert.Equal(quarter ?? law.At(-rise * 0.75).LiftIn / lift, law.At(-rise * 0.75).LiftIn / lift, 1e-11);
    }

    [Theory]
    [MemberData(nameof(Laws))]
    public void A_half_degree_table_gives_the_same_velocity(string name, double velocity, double acceleration, double? quarter)
    {
        const double lift = 0.4, rise = 1.2;
        var law = new RiseLaw(lift, rise, Rise(name));
        var table = TableLaw.Of(Enumerable.Range(0, 720).Select(i => new TablePoint(i / 2.0, law.At(Everyday.Rad(i / 2.0)).LiftIn)), 0);

        Assert.Equal(velocity, table.MaxVelocityInPerRad * rise / lift, velocity * 0.001);
        Assert.Equal(law.DurationCrankDeg(0.05), table.DurationCrankDeg(0.05), 0.001);
        Assert.True(acceleration > 0 && quarter is null or > 0);
    }

    private static Func<double, (double, double, double)> Rise(string name) =>
        typeof(RiseLaw).GetMethod(name)!.CreateDelegate<Func<double, (double, double, double)>>();
}
