using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;

namespace GrindShop.Papers.Tests;

public class TravelerPaperTests
{
    private static readonly Scene Soft = new();
    private static readonly PaperText Paper = new(TravelerPaper.Print(Soft.Traveler()));

    [Fact]
    public void Says_which_job_for_whom_from_which_blank()
    {
        Assert.Contains("J1042", Paper.Words[0].Select(word => word.Text));
        foreach (var text in new[] { "Harrow Lane Engines", "PO 7731, street car", "C1042", "Mon 14 Dec 2026", "RV8R-862-11", "L-2026-117", "Rack C, shelf 4", "8620 steel", "soft, hardened after rough", Scene.Url })
            Assert.Contains(text, Paper.All);
    }

    [Fact]
    public void Prints_the_specification_on_one_row_each_with_its_unit()
    {
        var spec = Paper.Strip(36, 272);
        Assert.Contains("Lobe lift 0.3655 0.3720 in", spec);
        Assert.Contains("Valve lift, 1.55 rocker 0.5665 0.5766 in", spec);
        Assert.Contains("Valve lift less lash 0.5505 0.5586 in", spec);
        Assert.Contains("Duration at .050 lift 242.0 248.5 crank deg", spec);
        Assert.Contains("Advertised duration 274.0 281.0 crank deg", spec);
        Assert.Contains("Advertised at a lift of 0.020 0.020 in", spec);
        Assert.Contains("Lash at the valve 0.016 0.018 in", spec);
        Assert.Contains("Lobe separation (LSA) 109.0 cam deg", spec);
        Assert.Contains("Intake centreline (ICL) 104.5 crank deg", spec);
        Assert.Contains("Exhaust centreline (ECL) 113.5 crank deg", spec);
        Assert.Contains("Advance +4.5 crank deg", spec);
        Assert.Contains("Roller diameter 0.750 in", spec);
        Assert.Contains("Follower solid roller", spec);
        Assert.Contains("Firing order 1-8-4-3-6-5-7-2", spec);
        Assert.Contains("Distributor gear Bronze: OK. Bronze is the sacrificial partner of a steel cam gear: inspect it and replace it in time.", Paper.Lines);
    }

    [Fact]
    public void Prints_what_was_computed_for_the_allocated_blank()
    {
        var fit = Soft.Answer(Soft.Part()).Blanks.Single();
        Assert.Contains($"Base circle diameter {Figures.In(fit.IntakeBaseCircleDiameterIn)} {Figures.In(fit.ExhaustBaseCircleDiameterIn)} in", Paper.Strip(36, 272));
        var metal = Paper.Strip(440, 576);
        Assert.Contains($"Comes off, least {Figures.In(fit.MinRemovalIn)} in", metal);
        Assert.Contains($"Comes off, most {Figures.In(fit.MaxRemovalIn)} in", metal);
        Assert.Contains("Turn, intake -0.75 cam deg", metal);
        Assert.Contains("Turn, exhaust -0.25 cam deg", metal);
    }

    [Fact]
    public void Says_how_much_of_the_case_is_left()
    {
        var hard = new Scene { Soft = false };
        var left = hard.Answer(hard.Part()).Blanks.Single().LeastCaseLeftIn!.Value;
        var paper = new PaperText(TravelerPaper.Print(hard.Traveler()));
        Assert.Contains($"Case left, least {Figures.In(left)} in", paper.Strip(440, 576));
        Assert.Contains("0.250 in, 58 HRC", paper.All);
    }

    [Fact]
    public void Lists_the_lobe_angles_front_to_rear()
    {
        var rows = EngineLayout.Of(Soft.Family, Soft.Answer(Soft.Part()).Grind).Required().Rows;
        var angles = Paper.Strip(290, 422);
        Assert.Equal(16, rows.Count);
        Assert.All(rows, row => Assert.Contains(
            FormattableString.Invariant($"{row.Position} {row.Lobe.Cylinder} {row.Lobe.Valve.ToString().ToLowerInvariant()} {row.FromDatumCamDeg:0.00}"), angles));
    }

    [Fact]
    public void A_family_that_cannot_be_laid_out_says_why_instead()
    {
        var scene = new Scene { Family = Scene.Eight(90, 90, 90, 90, 90, 90, 90, 80) };
        Assert.Contains("crank degrees, not 720.", new PaperText(TravelerPaper.Print(scene.Traveler())).All);
    }

    [Fact]
    public void Every_step_of_the_route_has_its_row_and_done_ones_their_signature()
    {
        var route = Paper.All;
        foreach (var step in Soft.Job().Steps)
        {
            Assert.Contains($"{step.Ordinal} {Figures.Capital(step.Stage.Words())}", route);
            Assert.Contains(step.Stage.Instructions()[..24], route);
        }
        Assert.Equal(2, Paper.Lines.Count(line => line.Contains("Anselm Roke 2026-11-2")));
        Assert.Equal(2, Paper.Lines.Count(line => line.EndsWith("Emberline Heat")));
    }

    [Fact]
    public void Carries_the_shops_cautions_and_no_money()
    {
        foreach (var caution in Cautions.Shop)
            Assert.Contains(caution[..40], Paper.All);
        Assert.DoesNotContain("417", Paper.All);
        Assert.DoesNotContain("$", Paper.All);
    }

    [Fact]
    public void Fits_one_page_with_title_author_and_embedded_fonts()
    {
        Assert.Single(Paper.Pages);
        Assert.Equal(("Traveler J1042", "Millrace Cam Grinding"), (Paper.Title, Paper.Author));
        Assert.Contains("page 1 of 1", Paper.All);
        Assert.All(Paper.Pages[0].Letters, letter => Assert.Matches("^[A-Z]{6}\\+", letter.FontName!));
    }
}
