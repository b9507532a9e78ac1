namespace GrindShop.Lobes.Tests;

public class ContactAdviceTests
{
    // Talbourdet and Morrison's factors as tabulated in Norton, Machine Design (memory).
    [Theory]
    [InlineData(CamAlloy.Sae8620, FollowerMotion.Rolling, 12_700)]
    [InlineData(CamAlloy.Sae8620, FollowerMotion.Sliding, 10_400)]
    [InlineData(CamAlloy.Sae5160, FollowerMotion.Rolling, 10_000)]
    [InlineData(CamAlloy.Sae8660, FollowerMotion.Sliding, 9_000)]
    [InlineData(CamAlloy.HardenableGrayIron, FollowerMotion.Sliding, 2_510)]
    [InlineData(CamAlloy.AustemperedDuctileIron, FollowerMotion.Rolling, 3_570)]
    public void The_nearest_published_row_stands_in(CamAlloy alloy, FollowerMotion motion, double psi)
    {
        var advice = ContactAdvice.For(alloy, motion)!;
        Assert.Equal(psi, advice.LoadStressPsi);
        Assert.Contains("stands in", advice.Remark);
        Assert.Equal(SourceKind.Memory, LoadStressFactor.Source.Kind);
    }

    [Fact]
    public void No_row_comes_near_tool_steel() => Assert.Null(ContactAdvice.For(CamAlloy.ToolSteel, FollowerMotion.Rolling));

    // The definition K = pi p0^2 [(1 - v1^2)/E1 + (1 - v2^2)/E2] (Norton, memory) read backwards.
    [Fact]
    public void At_the_factor_the_contact_has_the_advised_pressure()
    {
        var advice = ContactAdvice.For(CamAlloy.Sae8620, FollowerMotion.Rolling)!;
        var (e, v) = (ElasticConstants.Steel.ModulusPsi, ElasticConstants.Steel.Poisson);
        var forceLbf = advice.LoadStressPsi * .6 / (1 / .375 + 1 / .5);
        var contact = LineContact.Of(forceLbf, .6, .375, .5, e, e, v, v).Required();
        Assert.Equal(advice.PeakPressurePsi, contact.PeakPressurePsi, 1e-6);
        Assert.Equal(1, advice.ShareOf(contact), 1e-12);
        Assert.Equal(advice.LoadStressPsi, Math.PI * contact.PeakPressurePsi * contact.PeakPressurePsi * 2 * (1 - v * v) / e, 1e-6);
    }

    [Fact]
    public void Of_a_range_the_stiff_end_is_taken()
    {
        Assert.Equal(138, Si.MegapascalsFromPsi(ElasticConstants.GrayIron.ModulusPsi) / 1000, 1e-9);
        Assert.Equal(165, Si.MegapascalsFromPsi(ElasticConstants.DuctileIron.Modulus.Least) / 1000, 1e-9);
    }
}
