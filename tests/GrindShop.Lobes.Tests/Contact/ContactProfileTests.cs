namespace GrindShop.Lobes.Tests;

public class ContactProfileTests
{
    private static readonly ValveTrain Train = new(130, 350, 1.5, 0, 0.6);

    private static readonly FollowerFace Roller = new(.6, .375, ElasticConstants.Steel, ElasticConstants.Steel);

    [Theory]
    [InlineData(.3, 0, 0, 431.25)]      // 1.5 (130 + 350 x .45)
    [InlineData(.3, 0, 60, 862.5)]      // the same over cos 60 deg
    [InlineData(0, 0, 0, 195)]
    public void At_rest_the_spring_alone_presses(double lift, double acceleration, double angle, double lbf) =>
        Assert.Equal(lbf, Train.NormalForceLbf(lift, acceleration, angle, 0), 1e-9);

    // 6000 rpm at the crank is 100 pi rad/s at the cam; .6 lbf / 386.0886 in/s^2 x (-.5) x (100 pi)^2 = -76.69 lbf.
    [Fact]
    public void Over_the_nose_inertia_takes_force_away() =>
        Assert.Equal(431.25 - 76.69, Train.NormalForceLbf(.3, -.5, 0, 6000), 0.01);

    [Fact]
    public void Inertia_grows_with_the_square_of_speed()
    {
        double Inertia(double rpm) => Train.NormalForceLbf(.3, .4, 0, rpm) - Train.NormalForceLbf(.3, .4, 0, 0);
        Assert.Equal(4, Inertia(6000) / Inertia(3000), 1e-9);
    }

    [Fact]
    public void Open_lash_carries_no_spring_force()
    {
        var solid = Train with { LashIn = 0.021 };
        Assert.Equal(0, solid.NormalForceLbf(0.0139, 0, 0, 0), 1e-12);
        Assert.Equal(195, solid.NormalForceLbf(0.014, 0, 0, 0), 1e-9);
    }

    [Fact]
    public void Round_the_lobe_the_peak_is_found_and_troubles_are_named()
    {
        var profile = ContactProfile.Of(
        [
            new(-60, .10, 0, 15, null),
            new(-50, .12, 0, 15, -.30),
            new(0, .35, -.5, 0, .25),
            new(5, .35, -9, 0, .25),
        ],
        Train, Roller, 6000);

        Assert.Equal(0, profile.Peak!.CamDeg);
        Assert.Equal([-50, 5], profile.Troubled.Select(row => row.CamDeg));
        Assert.IsType<ContactProblem.Conforming>(profile.Rows[1].Contact.Problem);
        Assert.IsType<ContactProblem.ContactLost>(profile.Rows[3].Contact.Problem);
        Assert.True(profile.Rows[3].ForceLbf < 0);
    }

    [Fact]
    public void A_row_is_the_line_contact_of_its_own_force_and_radius()
    {
        var row = ContactProfile.Of([new(0, .3, 0, 0, .25)], Train, Roller, 0).Rows[0];
        var (e, v) = (ElasticConstants.Steel.ModulusPsi, ElasticConstants.Steel.Poisson);
        Assert.Equal(LineContact.Of(431.25, .6, .375, .25, e, e, v, v).Required(), row.Contact.Required());
    }

    // A point of inflection has no finite radius of curvature.
    [Theory]
    [InlineData(1e7)]
    [InlineData(double.NegativeInfinity)]
    public void An_almost_straight_flank_counts_as_straight(double radius) => Assert.Equal(
        ContactProfile.Of([new(0, .3, 0, 0, null)], Train, Roller, 0).Peak!.Contact.Required(),
        ContactProfile.Of([new(0, .3, 0, 0, radius)], Train, Roller, 0).Peak!.Contact.Required());

    [Fact]
    public void An_empty_profile_has_no_peak() => Assert.Null(ContactProfile.Of([], Train, Roller, 6000).Peak);

    [Fact]
    public void Nonsense_is_refused_by_name()
    {
        Assert.Throws<ArgumentOutOfRangeException>("engineRpm", () => Train.NormalForceLbf(.3, 0, 0, 1e9));
        Assert.Throws<ArgumentOutOfRangeException>("pressureAngleDeg", () => Train.NormalForceLbf(.3, 0, 90, 0));
        Assert.Throws<ArgumentOutOfRangeException>("SeatLoadLbf",
            () => (Train with { SeatLoadLbf = double.NaN }).NormalForceLbf(.3, 0, 0, 0));
        Assert.Throws<ArgumentOutOfRangeException>("radius2In", () => ContactProfile.Of([new(0, .3, 0, 0, double.NaN)], Train, Roller, 0));
    }
}
