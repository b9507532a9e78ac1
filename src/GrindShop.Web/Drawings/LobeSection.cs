using System.Globalization;
using GrindShop.Lobes;

namespace GrindShop.Web.Drawings;

/// <summary>
/// One finished lobe inside the lobe of its blank, cut across the shaft. Lobe frame: x towards the blank's nose, y towards the closing side, in inches.
/// </summary>
public sealed class LobeSection
{
    private readonly BandAnswer _metal;
    private readonly double _turnRad;
    private readonly FinishLobe _lobe;
    private readonly LobeContour _contour;

    private LobeSection(string name, BandAnswer metal, double turnCamDeg, FinishLobe lobe, LobeContour contour) =>
        (Name, _metal, _turnRad, _lobe, _contour) = (name, metal, double.DegreesToRadians(turnCamDeg), lobe, contour);

    /// <summary>"intake" or "exhaust".</summary>
    public string Name { get; }

    public IReadOnlyList<(double X, double Y)> Blank { get; private init; } = [];

    public IReadOnlyList<(double X, double Y)> Finish { get; private init; } = [];

    /// <summary>Where the hardened case ends; empty where it has no end or there is none.</summary>
    public IReadOnlyList<(double X, double Y)> CaseEdge { get; private init; } = [];

    public double LobeLiftIn { get; private init; }

    /// <summary>Depth of the hardened case from the blank's surface, in; null where it has no end.</summary>
    public double? CaseDepthIn { get; private init; }

    public double BaseCircleDiameterIn => _metal.BaseCircleDiameterIn;

    /// <summary>Least metal off, in; negative where the finished lobe would stand outside the metal.</summary>
    public double MinRemovalIn => _metal.MinRemovalIn;

    public double MaxRemovalIn => _metal.MaxRemovalIn;

    public double? LeastCaseLeftIn => _metal.LeastCaseLeftIn;

    public bool LacksMetal => MinRemovalIn < 0;

    /// <summary>Direction of the finished nose from the blank's, rad.</summary>
    public double NoseRad => _turnRad;

    /// <summary>Directions of the least and the most metal off, rad.</summary>
    public double LeastAtRad { get; private init; }

    public double MostAtRad { get; private init; }

    /// <summary>The numbers of the drawing in words.</summary>
    public string Description => string.Join(' ', Sentences());

    /// <summary>What is found where the follower touches at a cam angle from the finished nose, degrees, opening side negative.</summary>
    public LobeReading ReadAt(double camDeg)
    {
        var rad = double.DegreesToRadians(camDeg);
        var touched = _contour.TouchedAt(rad);
        var point = Turned((touched.XIn, touched.YIn), double.RadiansToDegrees(_turnRad));
        var removalIn = InwardOffset.DistanceIn(Blank, point) * (BlankSide.IsInside(Blank, point) ? 1 : -1);
        return new LobeReading(camDeg, _lobe.Law.At(rad).LiftIn, removalIn, CaseDepthIn - Math.Max(0, removalIn), point);
    }

    /// <param name="name">"intake" or "exhaust".</param>
    /// <param name="blank">The blank's lobe.</param>
    /// <param name="finish">The lobe wanted.</param>
    /// <param name="baseCircleDiameterIn">Base circle of the finished lobe, in.</param>
    /// <param name="turnCamDeg">Turn of the finished lobe's metal against the blank's, cam degrees, positive towards the closing side.</param>
    /// <param name="caseDepthIn">Depth of the case from the blank's surface, in; null where it has no end.</param>
    public static LobeSection Of(string name, BlankOutline blank, FinishLobe finish, double baseCircleDiameterIn, double turnCamDeg, double? caseDepthIn)
    {
        var metal = MetalBand.Judge(blank, finish, turnCamDeg, new BandLimits(0, caseDepthIn), baseCircleDiameterIn);
        var contour = LobeContour.Of(finish.Law, finish.Follower, baseCircleDiameterIn, 720);
        (double X, double Y)[] around = [.. blank.Points.Select(point => (point.XIn, point.YIn))];
        return new LobeSection(name, metal, turnCamDeg, finish, contour)
        {
            Blank = around,
            Finish = [.. contour.Points.Select(point => Turned((point.XIn, point.YIn), turnCamDeg))],
            CaseEdge = caseDepthIn is { } depth ? InwardOffset.Of(around, depth) : [],
            LobeLiftIn = finish.Law.LobeLiftIn,
            CaseDepthIn = caseDepthIn,
            LeastAtRad = DirectionRad(contour, metal.MinRemovalAtCamDeg, turnCamDeg),
            MostAtRad = DirectionRad(contour, metal.MaxRemovalAtCamDeg, turnCamDeg),
        };
    }

    /// <summary>The follower touches a flank well beside the direction it comes from.</summary>
    private static double DirectionRad(LobeContour contour, double touchedAtCamDeg, double turnCamDeg) =>
        contour.TouchedAt(double.DegreesToRadians(touchedAtCamDeg)).PolarAngleRad + double.DegreesToRadians(turnCamDeg);

    private static (double X, double Y) Turned((double X, double Y) point, double camDeg)
    {
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(camDeg));
        return (point.X * cos - point.Y * sin, point.X * sin + point.Y * cos);
    }

    private IEnumerable<string> Sentences()
    {
        yield return $"{(Name == "intake" ? "Intake" : "Exhaust")} lobe inside its blank, to scale: lobe lift {In(LobeLiftIn)} on a base circle of {In(BaseCircleDiameterIn)} diameter.";
        yield return LacksMetal
            ? $"Metal is missing: the finished lobe would stand up to {In(-MinRemovalIn)} outside the blank."
            : $"Metal to come off: {In(MinRemovalIn)} at the least, {In(MaxRemovalIn)} at the most.";
        if (LeastCaseLeftIn is { } left)
            yield return left > 0 ? $"At least {In(left)} of the hardened case is left." : "The hardened case would be ground through.";
    }

    private static string In(double value) => value.ToString("0.000", CultureInfo.InvariantCulture) + " in";
}
