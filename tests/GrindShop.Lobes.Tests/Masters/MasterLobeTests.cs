namespace GrindShop.Lobes.Tests;

public class MasterLobeTests
{
    private static readonly WheelSetting MadeAt = new(1.25, 9);

    // Fact of the trade: a smaller base circle from the same master gives a smaller duration under a roller (common practice, no source).
    [Theory]
    [InlineData(0.050)]
    [InlineData(0.100)]
    public void A_smaller_base_circle_shortens_the_duration_under_a_roller(double at)
    {
        var durations = new[] { 1.25, 1.20, 1.15, 1.10, 1.05 }.Select(bc => Ground(Everyday.Roller, bc).DurationCrankDeg(at)).ToList();

        Assert.Equal(durations.OrderDescending(), durations);
        Assert.InRange(durations[0] - durations[^1], 2, 6);
    }

    // ... and almost none of that under a flat tappet (follows from the geometry).
    [Fact]
    public void Under_a_flat_tappet_it_hardly_changes()
    {
        var law = Everyday.Lobe(222, 0.26);
        var flat = MasterLobe.Ground(law, Follower.Flat, MadeAt, new(1.10, 9)).DurationCrankDeg(0.05) - 222;
        var roller = MasterLobe.Ground(law, Everyday.Roller, MadeAt, new(1.10, 9)).DurationCrankDeg(0.05) - 222;

        Assert.InRange(Math.Abs(flat), 0, Math.Abs(roller) / 3);
    }

    [Fact]
    public void A_worn_wheel_lengthens_the_duration_and_keeps_the_lift()
    {
        var result = MasterLobe.Results(Everyday.Law, Everyday.Roller, MadeAt, [MadeAt, new(1.25, 7)], [0.05]);

        Assert.Equal(222, result[0].Durations[0].CrankDeg, 1e-8);
        Assert.True(result[1].Durations[0].CrankDeg > 222.3);
        Assert.Equal(0.335, result[1].LobeLiftIn, 1e-9);
        Assert.All(result, r => Assert.True(r.IsSound));
    }

    [Fact]
    public void A_wheel_too_large_for_the_flank_and_an_undercut_nose_are_told()
    {
        var hollow = new PolynomialLaw(0.45, 1.0, 6);

        Assert.False(MasterLobe.Results(hollow, Everyday.Roller, MadeAt, [new(1.2, 9)], [0.05])[0].IsSound);
        Assert.False(MasterLobe.Results(Everyday.Law, Everyday.Roller, MadeAt, [new(0.2, 9)], [0.05])[0].IsSound);
    }

    // Source: a separate brute-force program without any envelope formula (body = what no pass of the wheel removes, lift = where the
    // roller meets that body, 1,800 directions); its own error is about .001 crank degrees.
    [Theory]
    [InlineData(1.10, 9, 271.2085, 219.4652, 135.2683)]
    [InlineData(1.25, 7, 272.2795, 222.9489, 139.0038)]
    public void Durations_at_another_base_circle_and_wheel(double baseCircle, double wheel, double at006, double at050, double at200)
    {
        var result = MasterLobe.Results(Everyday.Law, Everyday.Roller, MadeAt, [new(baseCircle, wheel)], [0.006, 0.050, 0.200])[0];

        Assert.Equal([at006, at050, at200], result.Durations.Select(d => Math.Round(d.CrankDeg, 4)), (a, b) => Math.Abs(a - b) < 0.002);
    }

    [Fact]
    public void At_its_own_setting_the_chain_of_wheel_and_follower_closes()
    {
        var nearly = MasterLobe.Ground(Everyday.Law, Everyday.Roller, MadeAt, new(1.25, 9 + 1e-9));

        Assert.Equal(222, nearly.DurationCrankDeg(0.05), 1e-5);
        Assert.Equal(272, nearly.DurationCrankDeg(0.006), 1e-5);
    }

    [Fact]
    public void The_master_is_chosen_by_what_it_gives_at_the_base_circle_to_be_ground()
    {
        StoredMaster[] shelf =
        [
            new("222", Everyday.Law, Everyday.Roller, MadeAt),
            new("225", Everyday.Lobe(225), Everyday.Roller, MadeAt),
            new("flat 222", Everyday.Law, Follower.Flat, MadeAt),
        ];

        Assert.Equal("222", MasterChoice.Rank(shelf, Everyday.Roller, MadeAt, 222, 0.05, 0.335)[0].Master.Name);
        var small = MasterChoice.Rank(shelf, Everyday.Roller, new(1.08, 9), 222, 0.05, 0.335);
        Assert.Equal("225", small[0].Master.Name);
        Assert.Equal(2, small.Length);
        Assert.Equal(small[0].DurationCrankDeg - 222, small[0].DurationErrorCrankDeg, 1e-12);
    }

    private static LiftLaw Ground(Follower follower, double baseCircleIn) =>
        MasterLobe.Ground(Everyday.Law, follower, MadeAt, new(baseCircleIn, 9));
}
