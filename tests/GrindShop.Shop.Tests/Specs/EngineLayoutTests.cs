using GrindShop.Lobes;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Demo;
using GrindShop.Shop.Tests.Records;

namespace GrindShop.Shop.Tests.Specs;

// No textbook example was found; the expected angles follow from nose + crank / 2 = lifter axis, worked out by hand.
public class EngineLayoutTests
{
    public static IEnumerable<object?[]> Cams =>
        from family in SeedFiles.Scenario.Families
        from side in family.HasSides ? [CamSide.Left, CamSide.Right] : new CamSide?[] { null }
        select new object?[] { family.Code, side };

    [Fact]
    public void First_intake_of_the_eight_stands_half_its_centreline_and_the_datum_back()
    {
        var row = Rows(Family("RV8-R")).Single(row => row.Lobe == new LobePlace(1, ValveKind.Intake));
        Assert.Equal((3, 360 - 106 / 2.0 - 3.5), (row.Position, row.FromDatumCamDeg));
    }

    /// <summary>Left bank (odd cylinders) at 0, right bank 90 behind it: <c>e - F / 2</c> with F = 0, 90, 180, ...</summary>
    [Theory]
    [InlineData("1-8-4-3-6-5-7-2")]
    [InlineData("6-5-7-2-1-8-4-3")]
    [InlineData("1 8 4 3 6 5 7 2")]
    public void Intakes_of_the_eight_in_firing_order_wherever_the_order_starts(string order)
    {
        var rows = Rows(Family("RV8-R"), order: order);
        Assert.Equal([0, 225, 180, 225, 90, 135, 90, 315], new[] { 1, 8, 4, 3, 6, 5, 7, 2 }.Select(cylinder => Turn(rows, 1, cylinder)), Close);
    }

    /// <summary>Six of 150 and 90 crank degrees by turns, right bank 90 behind: 1 at 0, 6 at 150, 5 at 240, 4 at 390, 3 at 480, 2 at 630.</summary>
    [Fact]
    public void Odd_fire_keeps_its_own_intervals()
    {
        var rows = Rows(Family("UV6-O"));
        Assert.Equal([0, 195, 240, 75, 120, 315], new[] { 1, 6, 5, 4, 3, 2 }.Select(cylinder => Turn(rows, 1, cylinder)), Close);
    }

    [Fact]
    public void A_cam_of_one_side_has_the_lobes_of_its_bank()
    {
        var family = Family("OV8-D");
        Assert.Equal([5, 6, 7, 8], Rows(family, CamSide.Left).Select(row => row.Lobe.Cylinder).Distinct().Order());
        Assert.Equal([1, 2, 3, 4], Rows(family, CamSide.Right).Select(row => row.Lobe.Cylinder).Distinct().Order());
    }

    [Theory]
    [MemberData(nameof(Cams))]
    public void Every_family_of_the_demo_lays_out_with_its_exhausts_a_separation_after_the_intakes(string code, CamSide? side)
    {
        var family = Family(code);
        var rows = Rows(family, side);
        Assert.Equal((side is null ? 2 : 1) * family.Cylinders, rows.Count);
        Assert.All(rows.Where(row => row.Lobe.Valve == ValveKind.Exhaust), exhaust => Assert.Equal(110,
            Wrapped(exhaust.FromDatumCamDeg - rows.Single(row => row.Lobe == exhaust.Lobe with { Valve = ValveKind.Intake }).FromDatumCamDeg), 1e-9));
    }

    /// <summary>
    /// Why the left bank stands ahead: the crank turns clockwise seen from the front, so a pin passes the right bank first and each left
    /// cylinder fires a bank angle after the right one on its pin.
    /// </summary>
    [Fact]
    public void Every_left_cylinder_of_a_v_has_a_right_one_a_bank_angle_before_it()
    {
        foreach (var family in SeedFiles.Scenario.Families.Where(family => family.BankAngleDeg > 0))
        {
            var (left, right) = (FiresAt(family, 0), FiresAt(family, 1));
            Assert.All(left, fires => Assert.Contains(right, other => Math.Abs(Wrapped(fires - other - family.BankAngleDeg)) < 1e-9));
        }
    }

    private static List<double> FiresAt(EngineFamily family, int bank)
    {
        var order = FiringOrder.Parse(family.FiringOrder, family.Cylinders).Required();
        var schedule = family.FiringIntervalsCrankDeg is { Length: > 0 } intervals
            ? FiringSchedule.OddFire(order, intervals).Required()
            : FiringSchedule.EvenFire(order);
        return [.. order.Cylinders.Where(cylinder => family.BankOfCylinder[cylinder - 1] == bank).Select(cylinder => schedule.FiresAt(cylinder).Value)];
    }

    private static EngineFamily Family(string code) => SeedFiles.Scenario.Families.Single(family => family.Code == code);

    private static IReadOnlyList<LobeRow> Rows(EngineFamily family, CamSide? side = null, string? order = null) => EngineLayout.Of(family, new GrindSpec
    {
        EngineFamily = family.Code,
        Side = side,
        Lifter = LifterType.HydraulicRoller,
        FollowerDiameterIn = family.RollerDiameterIn,
        Intake = new LobeSpec(.335, 222, 272, .006),
        Exhaust = new LobeSpec(.335, 222, 272, .006),
        RockerRatio = family.RockerRatio,
        LobeSeparationCamDeg = 110,
        IntakeCenterlineCrankDeg = 106,
        FiringOrder = order ?? family.FiringOrder,
    }).Required().Rows;

    private static double Turn(IReadOnlyList<LobeRow> rows, int from, int to) => Wrapped(Intake(rows, to) - Intake(rows, from));

    private static double Intake(IReadOnlyList<LobeRow> rows, int cylinder) =>
        rows.Single(row => row.Lobe == new LobePlace(cylinder, ValveKind.Intake)).FromDatumCamDeg;

    private static double Wrapped(double camDeg) => CamDegrees.FromDegrees(camDeg).Wrapped().Value;

    private static bool Close(double one, double other) => Math.Abs(one - other) < 1e-9;
}
