using CsCheck;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using GrindShop.Web.Public;
using GrindShop.Web.Tests.Desk;

namespace GrindShop.Web.Tests.Public;

public sealed class SpecQueryTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly Gen<LobeWish> Lobe =
        from at050 in Maybe(FieldRange.DurationAt050)
        from lift in Maybe(FieldRange.LobeLift)
        from valve in Maybe(FieldRange.ValveLift)
        from advertised in Maybe(FieldRange.Advertised)
        from at in Maybe(FieldRange.AdvertisedAt)
        from lash in Maybe(FieldRange.Lash)
        select new LobeWish { DurationAt050CrankDeg = at050, LobeLiftIn = lift, ValveLiftIn = valve, AdvertisedDurationCrankDeg = advertised, AdvertisedAtIn = at, LashIn = lash };

    private static readonly Gen<CamSpec> Spec =
        from side in Gen.Enum<CamSide>().Nullable()
        from lifter in Gen.Enum<LifterType>().Nullable()
        from gear in Gen.Enum<DistributorGear>().Nullable()
        from order in Gen.Int[0, 2].Select(i => new[] { null, "1-8-4-3-6-5-7-2", "1 8 7 3 6 5 4 2" }[i])
        from intake in Lobe
        from exhaust in Lobe
        from timing in Gen.Select(Maybe(FieldRange.LobeSeparation), Maybe(FieldRange.IntakeCenterline), Maybe(FieldRange.Advance), Maybe(FieldRange.MaxBaseCircle))
        from train in Gen.Select(Maybe(FieldRange.FollowerDiameter), Maybe(FieldRange.RockerRatio))
        select new CamSpec
        {
            EngineFamily = "RV8-R",
            Side = side,
            Lifter = lifter,
            DistributorGear = gear,
            FiringOrder = order,
            Intake = intake,
            Exhaust = exhaust,
            LobeSeparationCamDeg = timing.Item1,
            IntakeCenterlineCrankDeg = timing.Item2,
            AdvanceCrankDeg = timing.Item3,
            MaxBaseCircleDiameterIn = timing.Item4,
            FollowerDiameterIn = train.Item1,
            RockerRatio = train.Item2,
        };

    [Fact]
    public async Task A_link_opens_the_same_cam()
    {
        var content = await shop.Get<Catalog>().ContentAsync();
        Spec.Sample(spec =>
        {
            var read = SpecQuery.Read(SpecQuery.Write(spec), content);
            return read.Ignored.Count == 0 && read.Draft.ToSpec() == spec;
        });
    }

    [Fact]
    public async Task Wrong_values_are_left_out_and_named_and_the_rest_stays()
    {
        var content = await shop.Get<Catalog>().ContentAsync();
        var read = SpecQuery.Read("?engine=rv8-r&lifter=7&i050=9000&ilift=%3Cb%3E&order=1-1&lsa=112&utm=x&icl=", content);
        Assert.Equal(["lifter", "firingOrder", "intake.durationAt050CrankDeg", "intake.lobeLiftIn"], read.Ignored.Select(problem => problem.Field));
        Assert.Contains("between 130 and 340 crank degrees", read.Ignored[2].Message);
        Assert.Equal(new CamSpec { EngineFamily = "RV8-R", LobeSeparationCamDeg = 112 }, read.Draft.ToSpec());
    }

    [Fact]
    public void A_link_names_its_blank() => Assert.Equal(
        "geometry?engine=RV8-R&lsa=110.5&blank=A%26B", SpecQuery.Link(new CamSpec { EngineFamily = "RV8-R", LobeSeparationCamDeg = 110.5 }, "A&B"));

    /// <summary>Six decimals: what a form keeps of a number.</summary>
    private static Gen<double?> Maybe(FieldRange range) =>
        Gen.Double[range.Least, range.Most].Select(value => Math.Clamp(Math.Round(value, 6), range.Least, range.Most)).Nullable();
}
