namespace GrindShop.Lobes.Tests;

public class AlloyDataTests
{
    [Fact]
    public void Every_alloy_has_one_row() =>
        Assert.Equal(Enum.GetValues<CamAlloy>(), AlloyData.All.Select(data => data.Alloy));

    // SAE J403 (1050, 1055: looked up) and J404 (the others: memory).
    [Theory]
    [InlineData(CamAlloy.Sae1050, .48, .55, SourceKind.Book)]
    [InlineData(CamAlloy.Sae1055, .50, .60, SourceKind.Book)]
    [InlineData(CamAlloy.Sae5150, .48, .53, SourceKind.Memory)]
    [InlineData(CamAlloy.Sae5160, .56, .64, SourceKind.Memory)]
    [InlineData(CamAlloy.Sae8620, .18, .23, SourceKind.Memory)]
    [InlineData(CamAlloy.Sae8660, .56, .64, SourceKind.Memory)]
    public void Carbon(CamAlloy alloy, double least, double most, SourceKind kind)
    {
        var carbon = AlloyData.Of(alloy).CarbonPercent!;
        Assert.Equal((least, most, kind), (carbon.Least, carbon.Most, carbon.Source.Kind));
    }

    [Theory]
    [InlineData(CamAlloy.Sae8620, 50.0)]
    [InlineData(CamAlloy.Sae1050, 45.0)]
    [InlineData(CamAlloy.Sae5160, 50.0)]
    [InlineData(CamAlloy.AustemperedDuctileIron, null)]
    [InlineData(CamAlloy.HardenableGrayIron, null)]
    public void Case_limit_of_an_alloy(CamAlloy alloy, double? hrc) => Assert.Equal(hrc, AlloyData.Of(alloy).CaseLimit?.Limit.Value);

    // Common practice, no source.
    [Theory]
    [InlineData(CamAlloy.Sae8620, 60, true)]
    [InlineData(CamAlloy.Sae8620, 57, false)]
    [InlineData(CamAlloy.Sae8620, 63, false)]
    [InlineData(CamAlloy.HardenableGrayIron, 55, true)]
    [InlineData(CamAlloy.HardenableGrayIron, 49, false)]
    public void Hardness_of_a_finished_lobe(CamAlloy alloy, double hrc, bool holds) =>
        Assert.Equal(holds, AlloyData.Of(alloy).Lobe!.Holds(hrc));

    // ASTM A159 (G4000d from memory) and ASTM A897.
    [Theory]
    [InlineData("G3500", 207, 255)]
    [InlineData("G4000", 217, 269)]
    [InlineData("G4000d", 241, 321)]
    [InlineData("150/110/07", 302, 375)]
    [InlineData("175/125/04", 341, 444)]
    [InlineData("200/155/02", 388, 477)]
    public void Iron_grades(string name, double least, double most)
    {
        var body = IronGrade.All.Single(grade => grade.Name == name).Body;
        Assert.Equal((HardnessScale.Hbw, least, most), (body.Scale, body.Least, body.Most!.Value));
        Assert.True(body.Holds(least) && body.Holds(most) && !body.Holds(most + 1) && !body.Holds(least - 1));
    }

    [Fact]
    public void Nonsense_is_refused_by_name() =>
        Assert.Throws<ArgumentOutOfRangeException>("value", () => AlloyData.Of(CamAlloy.Sae8620).Lobe!.Holds(double.NaN));
}
