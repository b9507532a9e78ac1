using CsCheck;
using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Web.Office;

namespace GrindShop.Web.Tests.Office;

public class HardnessWordsTests
{
    /// <summary>60 HRC is 697 HV and 654 HBW by ASTM E140, and Brinell above 58 HRC is outside its usual range.</summary>
    [Fact]
    public void A_reading_in_the_table_stands_on_every_scale() =>
        Assert.Equal("= 697 HV, 654 HBW (outside the Brinell scale's usual range).", HardnessWords.Converted(new(60, HardnessScale.Hrc)));

    /// <summary>ASTM E140's rows here run from 20 to 62 HRC, 226 to 688 HBW.</summary>
    [Theory]
    [InlineData(180, HardnessScale.Hbw, "180 HBW cannot be converted: the table runs from 226 to 688 HBW.")]
    [InlineData(63, HardnessScale.Hrc, "63 HRC cannot be converted: the table runs from 20 to 62 HRC.")]
    public void Nothing_is_guessed_beyond_the_table(double value, HardnessScale scale, string words) =>
        Assert.Equal(words, HardnessWords.Converted(new(value, scale)));

    /// <summary>Carburized 58 to 62 HRC, hardened gray iron at least 50 HRC (common practice, no source).</summary>
    [Theory]
    [InlineData(BlankAlloy.Steel8620, Hardening.Carburized, 63, HardnessScale.Hrc, "Outside the alloy's 58 to 62 HRC")]
    [InlineData(BlankAlloy.Steel8620, Hardening.Carburized, 180, HardnessScale.Hbw, "Outside the alloy's 58 to 62 HRC")]
    [InlineData(BlankAlloy.Steel8620, Hardening.Carburized, 697, HardnessScale.Hv, "Within the alloy's 58 to 62 HRC")]
    [InlineData(BlankAlloy.Steel8620, Hardening.Soft, 180, HardnessScale.Hbw, "The blank is delivered soft.")]
    [InlineData(BlankAlloy.HardenableIron, Hardening.ToTheBarrel, 800, HardnessScale.Hv, "Within the alloy's least of 50 HRC")]
    [InlineData(BlankAlloy.HardenableIron, Hardening.ToTheBarrel, 15, HardnessScale.Hrc, "Outside the alloy's least of 50 HRC")]
    public void A_reading_beyond_the_table_is_still_held_against_the_alloys_window(BlankAlloy alloy, Hardening hardening, double value, HardnessScale scale, string words) =>
        Assert.StartsWith(words, HardnessWords.Verdict(Part(alloy, hardening), new(value, scale)), StringComparison.Ordinal);

    [Fact]
    public void Whatever_can_be_written_down_can_be_shown() =>
        Gen.Select(Gen.Double[1e-3, 1_500], Gen.Enum<HardnessScale>(), Gen.Enum<BlankAlloy>(), Gen.Enum<Hardening>()).Sample((value, scale, alloy, hardening) =>
        {
            var reading = new HardnessReading(value, scale);
            return !reading.CanBe || (HardnessWords.Converted(reading) + HardnessWords.Verdict(Part(alloy, hardening), reading)).Length > 0;
        });

    private static BlankPart Part(BlankAlloy alloy, Hardening hardening) => new()
    {
        PartNumber = "X-1",
        EngineFamily = null!,
        Form = BlankForm.Milled,
        Alloy = alloy,
        Hardening = hardening,
        Gear = CamGear.None,
        FiringOrder = "1-2",
        LeastBaseCircleIn = 1,
        Supplier = null!,
        Cost = 1,
        LeadTimeDays = 1,
    };
}
