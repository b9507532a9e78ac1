namespace GrindShop.Papers.Tests;

public class SpecCardPaperTests
{
    private static readonly PaperText Card = new(SpecCardPaper.Print(new Scene().SpecCard()));

    [Fact]
    public void Carries_the_shops_head_and_the_order()
    {
        foreach (var text in new[] { "Millrace Cam Grinding", "1400 Millrace Lane", "(555) 555-0100", "desk@grindshop.example", "Harrow Lane Engines", "PO 7731, street car", "C1042, J1042", "Ridgetop V8, rear gear", "Wed 25 Nov 2026" })
            Assert.Contains(text, Card.All);
    }

    [Fact]
    public void Gives_lifts_durations_lash_and_base_circles()
    {
        var lobes = Card.Strip(36, 342);
        Assert.Contains("Lobe lift 0.3655 0.3720 in", lobes);
        Assert.Contains("Valve lift, 1.55 rocker 0.5665 0.5766 in", lobes);
        Assert.Contains("Advertised duration 274.0 281.0 crank deg", lobes);
        Assert.Contains("Advertised at a lift of 0.020 0.020 in", lobes);
        Assert.Contains("Lash at the valve 0.016 0.018 in", lobes);
        Assert.Contains(lobes, line => line.StartsWith("Base circle diameter 1."));
        Assert.Contains("Check lifts are lifter lifts", Card.All);
    }

    // By hand from IVO = D/2 - ICL and its like: 242/2 - 104.5, 242/2 + 104.5 - 180, 248.5/2 + 113.5 - 180, 248.5/2 - 113.5.
    [Fact]
    public void Gives_the_valve_events_and_the_overlap()
    {
        var events = Card.Strip(366, 576);
        Assert.Contains("Intake opens 16.5 BTDC", events);
        Assert.Contains("Intake closes 45.5 ABDC", events);
        Assert.Contains("Exhaust opens 57.75 BBDC", events);
        Assert.Contains("Exhaust closes 10.75 ATDC", events);
        Assert.Contains("Overlap at .050 27.25", events);
        Assert.Contains("Overlap at .020 59.5", events);
    }

    // 222/2 - 114 = -3: the exhaust is back at .050 three degrees before top dead centre.
    [Fact]
    public void An_event_on_the_other_side_of_its_dead_centre_says_so()
    {
        var card = new PaperText(SpecCardPaper.Print(new Scene { Soft = false, Spec = Scene.HydraulicFlat }.SpecCard()));
        Assert.Contains("Exhaust closes 3.0 BTDC", card.Strip(366, 576));
        Assert.Contains("Lash none none", card.Strip(36, 342));
        Assert.Contains("runs with: bronze", card.All);
    }

    [Fact]
    public void Warns_before_the_engine_runs()
    {
        foreach (var caution in Cautions.Engine)
            Assert.Contains(caution[..40], Card.All);
        Assert.Contains("the engine builder's own figures win", Card.All.Replace('\n', ' '));
        Assert.Contains("Bronze: OK. Bronze is the sacrificial partner of a steel cam gear", Card.All);
        Assert.DoesNotContain("$", Card.All);
    }

    [Fact]
    public void Is_one_page_with_title_and_author()
    {
        Assert.Single(Card.Pages);
        Assert.Equal(("Spec card J1042", "Millrace Cam Grinding"), (Card.Title, Card.Author));
    }
}
