using GrindShop.Lobes;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Prepared;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Distance;

namespace GrindShop.Benchmarks;

/// <summary>Buffer, contains and bisection by NetTopologySuite; polygons fine enough for .0003 in.</summary>
internal sealed class PolygonJudge
{
    public const double AccuracyIn = 0.0003;
    private const int Points = 720;
    private static readonly GeometryFactory Factory = new();
    private readonly Geometry blank;
    private readonly FinishLobe finish;

    public PolygonJudge(LiftLaw nominal, Follower follower, double baseCircleIn, double stockIn, FinishLobe finish)
    {
        this.finish = finish;
        blank = Grown(Outline(nominal, follower, baseCircleIn, 0), stockIn);
    }

    public (double MaxBaseCircleDiameterIn, double MinRemovalIn, double MaxRemovalIn, bool CaseKept) Judge(double turnDeg, BandLimits limits)
    {
        var edge = PreparedGeometryFactory.Prepare(Grown(blank, -limits.CleanupIn));
        double low = 0.5, high = 2;
        while (high - low > AccuracyIn)
        {
            var middle = (low + high) / 2;
            (low, high) = edge.Contains(Finished(middle, turnDeg)) ? (middle, high) : (low, middle);
        }
        var finished = Finished(low, turnDeg);
        var surface = new IndexedFacetDistance(((Polygon)blank).ExteriorRing);
        var depths = finished.Coordinates.Select(p => surface.Distance(Factory.CreatePoint(p))).ToList();
        return (low, depths.Min(), depths.Max(), finished.Contains(Grown(blank, -limits.MostRemovalIn!.Value)));
    }

    private Polygon Finished(double baseCircleIn, double turnDeg) => Outline(finish.Law, finish.Follower, baseCircleIn, turnDeg);

    private static Geometry Grown(Geometry shape, double by) => shape.Buffer(by, new BufferParameters(64));

    private static Polygon Outline(LiftLaw law, Follower follower, double baseCircleIn, double turnDeg)
    {
        var (sin, cos) = Math.SinCos(turnDeg * Math.PI / 180);
        var ring = LobeContour.Of(law, follower, baseCircleIn, Points).Points
            .Select(p => new Coordinate(p.XIn * cos - p.YIn * sin, p.XIn * sin + p.YIn * cos)).ToList();
        return Factory.CreatePolygon([.. ring, ring[0].Copy()]);
    }
}
