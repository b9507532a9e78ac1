namespace GrindShop.Lobes.Tests;

public class ShaftCheckTests
{
    private static readonly EngineBanks Engine = Engines.Eight(90);

    private static readonly LobePlace[] EvenIntakes =
        [.. new[] { 2, 4, 6, 8 }.Select(cylinder => new LobePlace(cylinder, ValveKind.Intake))];

    [Fact]
    public void A_cam_of_one_bank_carries_that_bank_alone()
    {
        var shaft = Engines.Shaft(Engine) with { OnlyBank = "even", Lobes = [.. EvenIntakes, .. EvenIntakes] };
        Assert.Equal(8, CamLayout.Of(Engine, shaft).Required().Rows.Count);
        Assert.Equal(new CamLayoutProblem.LobeOfOtherBank(EvenIntakes[0], "odd"),
            CamLayout.Of(Engine, shaft with { OnlyBank = "odd" }).Problem);
        Assert.Equal(new CamLayoutProblem.UnknownBank("third"), CamLayout.Of(Engine, shaft with { OnlyBank = "third" }).Problem);
    }

    [Fact]
    public void A_forgotten_lobe_is_found() => Assert.Equal(
        new CamLayoutProblem.UnevenLobes(new(1, ValveKind.Intake), 0, 1),
        CamLayout.Of(Engine, Engines.Shaft(Engine) with { Lobes = EvenIntakes }).Problem);

    [Fact]
    public void A_shaft_has_lobes_of_its_own_engine()
    {
        var shaft = Engines.Shaft(Engine);
        Assert.Equal(new CamLayoutProblem.NoLobes(), CamLayout.Of(Engine, shaft with { Lobes = [] }).Problem);
        Assert.Equal(new CamLayoutProblem.UnknownCylinder(9),
            CamLayout.Of(Engine, shaft with { Lobes = [new(9, ValveKind.Intake)] }).Problem);
    }

    [Fact]
    public void Each_cylinder_stands_in_one_bank()
    {
        var shaft = Engines.Shaft(Engine);
        Assert.Equal(new CamLayoutProblem.NotInOneBank(8, 0), CamLayout.Of(Engine with { Banks = [Engine.Banks[0]] }, shaft).Problem);
        Assert.Equal(new CamLayoutProblem.NotInOneBank(1, 2),
            CamLayout.Of(Engine with { Banks = [.. Engine.Banks, new("extra", 0, [1])] }, shaft).Problem);
        Assert.Equal(new CamLayoutProblem.UnknownCylinder(9),
            CamLayout.Of(Engine with { Banks = [.. Engine.Banks, new("extra", 0, [9])] }, shaft).Problem);
    }

    [Fact]
    public void Nonsense_is_refused_by_name()
    {
        var shaft = Engines.Shaft(Engine);
        Assert.Throws<ArgumentOutOfRangeException>("DatumClockwiseDeg",
            () => CamLayout.Of(Engine, shaft with { DatumClockwiseDeg = double.NaN }));
        Assert.Throws<ArgumentOutOfRangeException>("lobeSeparationCamDeg",
            () => CamLayout.Of(Engine, shaft with { LobeSeparationCamDeg = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>("LifterAxisClockwiseDeg", () => CamLayout.Of(Engines.Eight(1e9), shaft));
    }
}
