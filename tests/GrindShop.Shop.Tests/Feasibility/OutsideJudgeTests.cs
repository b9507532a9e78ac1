using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace GrindShop.Shop.Tests.Feasibility;

/// <summary>
/// Source: NetTopologySuite 2.6.0. The blank's edges are its buffers of the nominal lobe's polygon, "comes out" is its Contains. The
/// answered base circle goes in, one .0008 in larger does not; arcs and contours are chords, hence the margin.
/// </summary>
public class OutsideJudgeTests
{
    private const double MarginIn = .0008;
    private static readonly GeometryFactory Factory = new();

    /// <summary>Each milled blank of two families against its own grind and its neighbours', a little moved.</summary>
    public static IEnumerable<object[]> Pairs =>
        from family in new[] { "RV8-R", "SI6-F" }
        let milled = Shelf.Blanks.Where(blank => blank.Part.EngineFamily.Code == family && blank.Part.Nominal is not null).ToList()
        from pair in milled.Zip(milled.Skip(1).Append(milled[0])).SelectMany(pair => new[] { (pair.First, pair.First, 0.0, 0.0), (pair.First, pair.Second, 1.5, -2.0), (pair.Second, pair.First, -2.0, 3.0) })
        select new object[] { pair.Item1.Part.PartNumber, pair.Item2.Part.PartNumber, pair.Item3, pair.Item4 };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Base_circles_removals_and_case_agree(string wanted, string from, double lsa, double icl)
    {
        var (blank, nominal) = (Shelf.Blank(from), Shelf.Nominal(Shelf.Blank(wanted)));
        var grind = nominal with { LobeSeparationCamDeg = nominal.LobeSeparationCamDeg + lsa, IntakeCenterlineCrankDeg = nominal.IntakeCenterlineCrankDeg + icl };
        var fit = Shelf.Fit(grind, blank);

        if (fit.IntakeBaseCircleDiameterIn is { } intake && fit.ExhaustBaseCircleDiameterIn is { } exhaust)
            Agree(fit, blank, new Lobe(blank.Part.Nominal!.Intake, grind.Intake, grind, fit.IntakeTurnCamDeg, intake), new Lobe(blank.Part.Nominal.Exhaust, grind.Exhaust, grind, -fit.ExhaustTurnCamDeg, exhaust));
    }

    private static void Agree(BlankFit fit, PreparedBlank blank, params Lobe[] lobes)
    {
        var capped = Math.Min(blank.Part.EngineFamily.BoreLimitIn(lobes.Max(lobe => lobe.Wanted.LobeLiftIn)) ?? 9, 9) - 1e-6;
        foreach (var lobe in lobes)
        {
            var edge = Edge(blank.Part.Nominal!, lobe.Blank, Shelf.Rules.Settings.CleanupIn);
            Assert.True(edge.Contains(lobe.Finished(-MarginIn)), "Slightly smaller comes out.");
            if (lobe.BaseCircleIn < capped)
                Assert.False(edge.Contains(lobe.Finished(MarginIn)), "Slightly larger does not.");
        }

        var depths = lobes.SelectMany(lobe => Depths(blank.Part.Nominal!, lobe)).ToList();
        Assert.Equal(depths.Min(), fit.MinRemovalIn!.Value, 3e-4);
        Assert.Equal(depths.Max(), fit.MaxRemovalIn!.Value, 3e-4);
        if (blank.Part.CaseDepthIn is { } depth)
            Assert.Equal(depth - depths.Max(), fit.LeastCaseLeftIn!.Value, 3e-4);
    }

    private static IEnumerable<double> Depths(NominalGrind nominal, Lobe lobe)
    {
        var surface = new NetTopologySuite.Operation.Distance.IndexedFacetDistance(((Polygon)Edge(nominal, lobe.Blank, 0)).ExteriorRing);
        return lobe.Finished(0).Coordinates.Select(point => surface.Distance(Factory.CreatePoint(point)));
    }

    private static Geometry Edge(NominalGrind nominal, LobeSpec lobe, double insideIn) =>
        Outline(lobe, nominal.Follower, nominal.BaseCircleDiameterIn, 0).Buffer(nominal.StockIn - insideIn, new BufferParameters(128));

    private static Polygon Outline(LobeSpec lobe, Follower follower, double baseCircleIn, double turnDeg)
    {
        var (sin, cos) = Math.SinCos(turnDeg * Math.PI / 180);
        var ring = LobeContour.Of(PolynomialLaw.Solve(lobe), follower, baseCircleIn, 1440).Points
            .Select(point => new Coordinate(point.XIn * cos - point.YIn * sin, point.XIn * sin + point.YIn * cos)).ToList();
        return Factory.CreatePolygon([.. ring, ring[0].Copy()]);
    }

    private sealed record Lobe(LobeSpec Blank, LobeSpec Wanted, GrindSpec Grind, double TurnCamDeg, double BaseCircleIn)
    {
        public Polygon Finished(double larger) => Outline(Wanted, Grind.Follower(), BaseCircleIn + larger, TurnCamDeg);
    }
}
