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
