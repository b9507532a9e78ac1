using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace GrindShop.Lobes.Tests;

/// <summary>
/// Source: NetTopologySuite 2.6.0. Blank and edges are its buffers of the nominal grind's polygon, "inside" is its Contains; cases
/// within .0002 in of a limit are left out, since its arcs and our polygons are chords.
/// </summary>
public class PolygonJudgeTests
{
    private const double NearIn = 0.0002;
    private static readonly GeometryFactory Factory = new();

    private static readonly Gen<(double At050, double Lift, double Roller, double Turn, double BaseCircle, double Stock)> Pairs =
        from at050 in Gen.Double[210, 250]
        from lift in Gen.Double[0.30, 0.38]
        from roller in Gen.Double[0.33, 0.42]
        from turn in Gen.Double[-5, 5]
        from baseCircle in Gen.Double[1.10, 1.30]
        from stock in Gen.Double[0.020, 0.100]
        select (at050, lift, roller, turn, baseCircle, stock);

    [Fact]
    public void Fits_agrees_with_buffers_and_contains() => Pairs.Sample(
        c =>
        {
            var limits = new BandLimits(0.005, 0.080, 0.030);
            var law = Everyday.Lobe(c.At050, c.Lift);
            var blank = BlankOutline.Milled(Everyday.Law, Everyday.Roller, Everyday.BaseCircleIn, c.Stock);
            var answer = MetalBand.Judge(blank, new(law, Follower.Roller(c.Roller)), c.Turn, limits, c.BaseCircle);
            if (Math.Abs(answer.MinRemovalIn - 0.005) < NearIn || Math.Abs(answer.MaxRemovalIn - 0.050) < NearIn || answer.Undercut)
                return;
            var rough = Round(Polygon(Everyday.Law, Everyday.Roller, Everyday.BaseCircleIn, 0), c.Stock);
            var finished = Polygon(law, Follower.Roller(c.Roller), c.BaseCircle, c.Turn);
            Assert.Equal(Round(rough, -0.005).Contains(finished), answer.InsideOutsideEdge);
            Assert.Equal(finished.Contains(Round(rough, -0.050)), answer.CaseKept);
        },
        iter: 60);

    [Fact]
    public void Removals_are_its_distances()
    {
        var answer = MetalBand.Judge(Everyday.Blank, new(Everyday.Lobe(235), Everyday.Roller), 0.7, new(0.005), 1.2);
        var surface = Round(Polygon(Everyday.Law, Everyday.Roller, Everyday.BaseCircleIn, 0), 0.030).ExteriorRing;
        var finished = Polygon(Everyday.Lobe(235), Everyday.Roller, 1.2, 0.7);
        var depths = finished.Coordinates.Select(p => surface.Distance(Factory.CreatePoint(p))).ToList();

        Assert.Equal(depths.Min(), answer.MinRemovalIn, 3e-5);
        Assert.Equal(depths.Max(), answer.MaxRemovalIn, 3e-5);
    }

    private static Polygon Round(Polygon shape, double by) => (Polygon)shape.Buffer(by, new BufferParameters(256));

    private static Polygon Polygon(LiftLaw law, Follower follower, double baseCircle, double turnDeg)
    {
        var (sin, cos) = Math.SinCos(Everyday.Rad(turnDeg));
        var ring = LobeContour.Of(law, follower, baseCircle, 2000).Points
            .Select(p => new Coordinate(p.XIn * cos - p.YIn * sin, p.XIn * sin + p.YIn * cos)).ToList();
        return Factory.CreatePolygon([.. ring, ring[0].Copy()]);
    }
}
