using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;
using GrindShop.Web.Public;

namespace GrindShop.Web.Tests.Public;

public sealed class SpecDraftTests
{
    [Fact]
    public void A_specification_comes_back_as_it_went_in()
    {
        var lobe = new LobeWish { LobeLiftIn = .335, DurationAt050CrankDeg = 222, AdvertisedDurationCrankDeg = 272, AdvertisedAtIn = .006, LashIn = .016 };
        var spec = new CamSpec
        {
            EngineFamily = "RV8-R",
            Side = CamSide.Left,
            Lifter = LifterType.SolidRoller,
            FollowerDiameterIn = .750,
            Intake = lobe,
            Exhaust = lobe with { LobeLiftIn = null, ValveLiftIn = .525 },
            RockerRatio = 1.5,
            LobeSeparationCamDeg = 110,
            IntakeCenterlineCrankDeg = 106.5,
            AdvanceCrankDeg = 3.5,
            DistributorGear = DistributorGear.Bronze,
            MaxBaseCircleDiameterIn = 1.1,
            FiringOrder = "1-8-4-3-6-5-7-2",
            Use = "street",
            Notes = "two\nlines",
        };
        Assert.Equal(spec, SpecDraft.Of(spec).ToSpec());
    }

    [Fact]
    public void A_number_that_cannot_be_read_names_field_and_range_and_stays()
    {
        var draft = new SpecDraft { ["intake.lobeLiftIn"] = "abc" };
        var problem = Assert.Single(draft.Unreadable());
        Assert.Equal("intake.lobeLiftIn", problem.Field);
        Assert.Equal("\"abc\" is not a number. Lobe lift must lie between 0.1 and 0.7 in.", problem.Message);
        Assert.Null(draft.ToSpec().Intake.LobeLiftIn);
        Assert.Equal("abc", draft["intake.lobeLiftIn"]);
    }

    [Fact]
    public void Every_number_has_an_id_of_its_own()
    {
        var ids = NumberField.All.Select(field => field.Id).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(NumberField.All, field => Assert.Equal(field.Id, FieldIds.Of(field.Path)));
    }

    [Theory]
    [InlineData("engineFamily", "engine-family")]
    [InlineData("contact.email", "contact-email")]
    [InlineData("intake.durationAt050CrankDeg", "intake-duration-050")]
    [InlineData("lobeSeparationCamDeg", "lsa")]
    public void A_problem_leads_to_its_input(string path, string id) => Assert.Equal(id, FieldIds.Of(path));
}
