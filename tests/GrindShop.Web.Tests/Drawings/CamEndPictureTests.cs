using GrindShop.Lobes;
using GrindShop.Shop.Engines;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Tests.Drawings;

public sealed class CamEndPictureTests
{
    /// <summary>An in-line four, order 1-3-4-2, datum on the lifter axis: its intakes stand 90 cam degrees apart (exact), the first at -53 from the datum.</summary>
    private static readonly CamLayout Four = CamLayout.Of(
        new EngineBanks(FiringSchedule.EvenFire(FiringOrder.Of([1, 3, 4, 2], 4).Required()), [new Bank("left", 0, [1, 2, 3, 4])]),
        new CamShaft
        {
            Turns = Rotation.Clockwise,
            Lobes = [.. from cylinder in Enumerable.Range(1, 4) from valve in new[] { ValveKind.Intake, ValveKind.Exhaust } select new LobePlace(cylinder, valve)],
            LobeSeparationCamDeg = 110,
            IntakeCenterlineCrankDeg = 106,
        }).Required();

    [Fact]
    public void Spokes_point_where_the_layout_says_clockwise_from_the_top()
    {
        var picture = new CamEndPicture(Four, CamRotation.Clockwise, CamDatum.Dowel);
        Assert.Equal(8, picture.Spokes.Count);
        Assert.Equal(307, Bearing(picture, "1I"), .01);
        Assert.Equal(307 + 110 - 360, Bearing(picture, "1E"), .01);
        Assert.Equal(217, Bearing(picture, "3I"), .01);
    }

    [Fact]
    public void A_cam_that_turns_the_other_way_is_the_mirror_image()
    {
        var picture = new CamEndPicture(Four, CamRotation.CounterClockwise, CamDatum.Keyway);
        Assert.Equal(360 - 307, Bearing(picture, "1I"), .01);
        Assert.Contains("turns counter-clockwise, the keyway at the top", picture.Description);
        Assert.Contains("1I 307.0, 1E 57.0", picture.Description);
    }

    [Fact]
    public void Exhaust_spokes_are_shorter()
    {
        var picture = new CamEndPicture(Four, CamRotation.Clockwise, CamDatum.Dowel);
        Assert.All(picture.Spokes, spoke => Assert.Equal(spoke.Valve == ValveKind.Intake ? 140 : 86, Reach(spoke.Tip), 1e-6));
        Assert.All(picture.Spokes, spoke => Assert.InRange(Reach(spoke.LabelAt), 0, CamEndPicture.Middle - 10));
    }

    private static double Bearing(CamEndPicture picture, string label)
    {
        var tip = picture.Spokes.Single(spoke => spoke.Label == label).Tip;
        return (double.RadiansToDegrees(Math.Atan2(tip.X - CamEndPicture.Middle, CamEndPicture.Middle - tip.Y)) + 360) % 360;
    }

    private static double Reach(PicturePoint point) => Math.Sqrt(Math.Pow(point.X - CamEndPicture.Middle, 2) + Math.Pow(point.Y - CamEndPicture.Middle, 2));
}
