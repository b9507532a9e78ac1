using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;

namespace GrindShop.Papers.Tests;

/// <summary>Traveler and card of a cam that the customer brought.</summary>
public class RepairPaperTests
{
    private static readonly GearAdvice Advice = new(GearVerdict.Ok, "It runs, but the bronze gear wears: look at it regularly.");

    [Fact]
    public void The_traveler_of_a_new_gear_names_the_cam_and_both_gears()
    {
        var paper = new PaperText(TravelerPaper.Print(new TravelerFacts(Gear(), Scene.Shop, Scene.Url, Scene.Now) { Gear = Advice }));

        foreach (var text in new[] { "Three teeth gone.", "Marks on the cam M-14", "Press off a pressed-on iron gear", "Press on an austempered ductile iron gear", Advice.Reason, "Press gear" })
            Assert.Contains(text, paper.All, StringComparison.Ordinal);
        Assert.Empty(paper.Overlaps());
    }

    [Fact]
    public void The_card_of_a_new_gear_says_what_was_done_and_when()
    {
        var job = Gear();
        foreach (var stage in new[] { Stage.Receive, Stage.PressGear, Stage.Inspect, Stage.Ship })
            Assert.True(job.Complete(stage, "Anselm Roke", Scene.Now, $"key-{stage}").Succeeded);

        var paper = new PaperText(SpecCardPaper.Print(new SpecCardFacts(job, Scene.Shop, Scene.Now) { Gear = Advice }));

        foreach (var text in new[] { "Gear replacement of your own cam", "Three teeth gone.", "Pressed on an austempered ductile iron gear", "Done: press gear Wed 25 Nov 2026", Advice.Reason, "contact pattern" })
            Assert.Contains(text, paper.All, StringComparison.Ordinal);
        Assert.DoesNotContain("Done: ship", paper.All, StringComparison.Ordinal);
        Assert.Empty(paper.Overlaps());
        Assert.Single(paper.Pages);
    }

    [Fact]
    public void The_card_of_a_regrind_says_what_it_was_ground_to()
    {
        var job = Job(new CamEntry { Kind = WorkKind.Regrind, Spec = Scene.SolidRoller, ReceivedCondition = "Two lobes pitted." });

        var paper = new PaperText(SpecCardPaper.Print(new SpecCardFacts(job, Scene.Shop, Scene.Now)));

        foreach (var text in new[] { "Regrind of your own cam", "Two lobes pitted.", "Intake duration at .050 242 crank deg", "Piston-to-valve clearance" })
            Assert.Contains(text, paper.All, StringComparison.Ordinal);
        Assert.Empty(paper.Overlaps());
    }

    [Theory]
    [InlineData(GearVerdict.Ok, "Distributor gear: Bronze: OK. Why.")]
    [InlineData(GearVerdict.Caution, "Distributor gear: Bronze: CAUTION. Why.")]
    [InlineData(GearVerdict.No, "Distributor gear: Bronze: DO NOT RUN. Why.")]
    [InlineData(GearVerdict.None, "Distributor gear: Why.")]
    public void Both_papers_of_a_new_gear_say_whether_it_may_run(GearVerdict verdict, string said)
    {
        var advice = new GearAdvice(verdict, "Why.");

        Assert.Contains(said, new PaperText(SpecCardPaper.Print(new SpecCardFacts(Gear(), Scene.Shop, Scene.Now) { Gear = advice })).All, StringComparison.Ordinal);
        Assert.Contains(said, new PaperText(TravelerPaper.Print(new TravelerFacts(Gear(), Scene.Shop, Scene.Url, Scene.Now) { Gear = advice })).All, StringComparison.Ordinal);
    }

    [Fact]
    public void The_card_of_a_new_gear_that_nobody_wrote_down_claims_no_grinding()
    {
        var job = Job(new CamEntry { Kind = WorkKind.GearReplacement, Spec = Scene.SolidRoller, ReceivedCondition = "Three teeth gone." });

        var paper = new PaperText(SpecCardPaper.Print(new SpecCardFacts(job, Scene.Shop, Scene.Now)));

        Assert.Contains("Gear replacement of your own cam", paper.All, StringComparison.Ordinal);
        Assert.DoesNotContain("duration", paper.All, StringComparison.OrdinalIgnoreCase);
    }

    private static Job Gear() => Job(new CamEntry
    {
        Kind = WorkKind.GearReplacement,
        Spec = new CamSpec { EngineFamily = "RV8-R", DistributorGear = DistributorGear.Bronze },
        ReceivedCondition = "Three teeth gone.",
        Gear = new GearSwap { Marks = "M-14", Old = CamGear.PressedIron, New = CamGear.AustemperedDuctileIron },
    });

    private static Job Job(CamEntry cam)
    {
        var enquiry = new Enquiry { SubmitKey = "key", Channel = OrderChannel.WalkIn, Kind = cam.Kind, Spec = cam.Spec, ReceivedCondition = cam.ReceivedCondition, Gear = cam.Gear, Contact = new Contact { Name = "Alma Brandvold" } };
        var order = Order.Receive(new OrderNumbers("C1042", "SECRETTRACKING"), enquiry, new Customer { Name = "Alma Brandvold", Since = Scene.Now }, null, "Petra Vane", Scene.Now);
        var (today, line) = (new DateOnly(2026, 11, 25), new PriceLine("repair", "New gear", 135) { RuleAmount = 135 });
        Assert.True(order.Quote(new QuoteOffer { Parts = new Dictionary<int, string>(), Lines = [line], ValidUntil = today.AddDays(30) }, today, "Petra Vane", Scene.Now).Succeeded);
        Assert.True(order.Accept(today.AddDays(14), today, "Petra Vane", Scene.Now).Succeeded);
        return global::GrindShop.Shop.Routing.Job.Open(order, order.First, null, Stages.RouteFor(cam.Kind), "Petra Vane", Scene.Now).Value!;
    }
}
