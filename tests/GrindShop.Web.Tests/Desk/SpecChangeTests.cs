using GrindShop.Shop.Specs;
using GrindShop.Web.Desk;
using GrindShop.Web.Public;

namespace GrindShop.Web.Tests.Desk;

public sealed class SpecChangeTests
{
    private static readonly CamSpec Basis = new()
    {
        EngineFamily = "RV8-R",
        Lifter = LifterType.SolidRoller,
        Intake = new LobeWish { LobeLiftIn = .370, DurationAt050CrankDeg = 246 },
        LobeSeparationCamDeg = 110,
        Notes = "asked twice",
    };

    [Fact]
    public void A_change_names_the_field_with_both_values_and_their_unit()
    {
        var newer = Basis with { LobeSeparationCamDeg = 108, Intake = Basis.Intake with { LashIn = .018 } };
        Assert.Equal(
            [new SpecChange("Intake lash", null, "0.018 in"), new SpecChange("Lobe separation", "110 cam deg", "108 cam deg")],
            SpecChange.Between(Basis, newer));
    }

    [Fact]
    public void The_same_specification_has_no_changes() => Assert.Empty(SpecChange.Between(Basis, Basis with { }));

    [Fact]
    public void Typed_fields_stay_and_untouched_ones_follow_the_newer_state()
    {
        var typed = Basis with { LobeSeparationCamDeg = 112, Intake = Basis.Intake with { LobeLiftIn = .365 }, Notes = null };
        var newer = Basis with { LobeSeparationCamDeg = 108, Intake = Basis.Intake with { DurationAt050CrankDeg = 250 }, Lifter = LifterType.HydraulicRoller };
        var carried = SpecCarry.Carry(Basis, SpecDraft.Of(typed), newer).ToSpec();
        Assert.Equal(typed with { Intake = new LobeWish { LobeLiftIn = .365, DurationAt050CrankDeg = 250 }, Lifter = LifterType.HydraulicRoller }, carried);
    }

    [Fact]
    public void Text_that_is_no_number_stays_as_it_was_typed()
    {
        var typed = SpecDraft.Of(Basis);
        typed["rockerRatio"] = "1,6?";
        Assert.Equal("1,6?", SpecCarry.Carry(Basis, typed, Basis with { LobeSeparationCamDeg = 108 })["rockerRatio"]);
    }

    [Fact]
    public void Every_field_of_a_specification_has_its_words()
    {
        var lobe = typeof(LobeWish).GetProperties().Length;
        var own = typeof(CamSpec).GetProperties().Count(property => property.PropertyType != typeof(LobeWish));
        Assert.Equal(own + 2 * lobe, SpecWords.Fields.Count);
        Assert.Equal(SpecWords.Fields.Count, SpecWords.Fields.Select(field => field.Path).Distinct().Count());
    }
}
