using System.Globalization;
using GrindShop.Lobes;

namespace GrindShop.Web.Drawings;

/// <summary>One lobe to plot: its lift and its ground contour.</summary>
public sealed record LawLobe(string Name, LiftLaw Law, LobeContour Contour);

/// <summary>A peak of both curves: the values and where they stand.</summary>
public sealed record LawPeak(string Which, string Intake, PicturePoint IntakeAt, string Exhaust, PicturePoint ExhaustAt)
{
    /// <summary>Where both values are written, one above the other: beside the marks, on the side of the sheet's middle.</summary>
    public PicturePoint Label => new(Math.Max(IntakeAt.X, ExhaustAt.X) + 10, IsHigh ? Math.Min(IntakeAt.Y, ExhaustAt.Y) + 6 : Math.Min(IntakeAt.Y, ExhaustAt.Y) - 28);

    private bool IsHigh => IntakeAt.Y < (PlotFrame.Top + PlotFrame.Bottom) / 2;
}

/// <summary>One quantity of both lobes over the cam angle from each lobe's nose, laid out for drawing.</summary>
public sealed class LawPlot
{
    private const double StepCamDeg = .5, RoomCamDeg = 6;
    private readonly LawQuantity _quantity;

    private LawPlot(LawQuantity quantity, LawLobe intake, LawLobe exhaust)
    {
        _quantity = quantity;
        var reach = RoomCamDeg + double.RadiansToDegrees(new[] { intake, exhaust }.Max(lobe => Math.Max(-lobe.Law.SupportStartRad, lobe.Law.SupportEndRad)));
        X = PlotFrame.Across(-Math.Min(180, reach), Math.Min(180, reach), rounded: false);
        var (ofIntake, ofExhaust) = (Values(intake), Values(exhaust));
        var all = ofIntake.Concat(ofExhaust).Select(point => point.Y).OfType<double>().Append(0).ToList();
        Y = PlotFrame.Up(all.Min(), all.Max());
        (Intake, Exhaust) = (PlotFrame.Curve(X, Y, ofIntake), PlotFrame.Curve(X, Y, ofExhaust));
        Peaks = [.. Extremes(ofIntake, ofExhaust)];
        (IntakeCrossings, ExhaustCrossings) = (Crossings(intake), Crossings(exhaust));
    }

    public PlotAxis X { get; }

    public PlotAxis Y { get; }

    public string Title => _quantity.Title;

    /// <summary>What runs up, with its unit.</summary>
    public string YTitle => $"{_quantity.Title}, {_quantity.Unit}";

    /// <summary>Path data.</summary>
    public string Intake { get; }

    public string Exhaust { get; }

    public IReadOnlyList<LawPeak> Peaks { get; }

    /// <summary>Where the lifter passes .050 in, cam degrees from the nose.</summary>
    public IReadOnlyList<double> IntakeCrossings { get; }

    public IReadOnlyList<double> ExhaustCrossings { get; }

    /// <summary>The numbers of the drawing in words.</summary>
    public string Description =>
        $"{Title} over cam degrees from the nose. Intake: {Words(Peaks.Select(peak => $"{peak.Which} {peak.Intake}"), IntakeCrossings)}. Exhaust: {Words(Peaks.Select(peak => $"{peak.Which} {peak.Exhaust}"), ExhaustCrossings)}.";

    /// <summary>Lift, velocity, acceleration and the contour's radius of curvature.</summary>
    public static IReadOnlyList<LawPlot> Of(LawLobe intake, LawLobe exhaust) => [.. LawQuantity.All.Select(quantity => new LawPlot(quantity, intake, exhaust))];

    private List<(double X, double? Y)> Values(LawLobe lobe)
    {
        var steps = (int)Math.Floor(X.To / StepCamDeg);
        return [.. Enumerable.Range(-steps, 2 * steps + 1).Select(i => i * StepCamDeg).Select(deg => (deg, _quantity.At(lobe, double.DegreesToRadians(deg))))];
    }

    private IEnumerable<LawPeak> Extremes(List<(double X, double? Y)> intake, List<(double X, double? Y)> exhaust)
    {
        if (_quantity.ShowsMost)
            yield return Peak("most", intake.MaxBy(point => point.Y), exhaust.MaxBy(point => point.Y));
        if (_quantity.ShowsLeast)
            yield return Peak("least", Least(intake), Least(exhaust));
    }

    private (double X, double? Y) Least(List<(double X, double? Y)> points) =>
        points.Where(point => point.Y is { } y && (y > 0 || !_quantity.LeastIsConvex)).OrderBy(point => point.Y).FirstOrDefault((X: 0.0, Y: 0.0));

    private LawPeak Peak(string which, (double X, double? Y) intake, (double X, double? Y) exhaust) => new(which, Say(intake), Place(intake), Say(exhaust), Place(exhaust));

    private string Say((double X, double? Y) point) => point.Y!.Value.ToString(_quantity.Format, CultureInfo.InvariantCulture);

    private PicturePoint Place((double X, double? Y) point) => new(X.At(point.X), Y.At(point.Y!.Value));

    private string Words(IEnumerable<string> peaks, IReadOnlyList<double> crossings) => string.Create(
        CultureInfo.InvariantCulture,
        $"{string.Join(", ", peaks)} {_quantity.Unit}; .050 in of lift is passed {-crossings[0]:0.0} cam degrees before and {crossings[1]:0.0} after the nose");

    private static IReadOnlyList<double> Crossings(LawLobe lobe) =>
    [
        double.RadiansToDegrees(lobe.Law.CrossingRad(LobeSpec.UsualCheckLiftIn, closing: false)),
        double.RadiansToDegrees(lobe.Law.CrossingRad(LobeSpec.UsualCheckLiftIn, closing: true)),
    ];
}
