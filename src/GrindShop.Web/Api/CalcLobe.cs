using GrindShop.Lobes;

namespace GrindShop.Web.Api;

internal sealed record DurationAt(double AtIn, double CrankDeg);

/// <param name="CamDeg">Cam angle of the lift, and polar angle of the radius; nose at 0, opening side negative.</param>
/// <param name="LiftIn">Lifter lift at this cam angle.</param>
/// <param name="RadiusIn">Distance from the cam's axis to the contour at this polar angle.</param>
internal sealed record LobePoint(double CamDeg, double LiftIn, double RadiusIn);

internal sealed record LobeResponse(
    IReadOnlyList<DurationAt> Durations, double MaxVelocityInPerCamDeg, double? MaxPressureAngleDeg, double? MinFootRadiusIn,
    double? MinConvexRadiusIn, double? MinConcaveRadiusIn, bool Groundable, IReadOnlyList<string> Problems, IReadOnlyList<LobePoint>? Points);

/// <summary>POST calc/lobe: durations, limits and, if asked, the points of one lobe.</summary>
internal static class CalcLobe
{
    private static readonly double[] UsualChecksIn = [.006, .020, .050, .100, .200];

    public static async Task<IResult> AnswerAsync(HttpRequest http)
    {
        var problems = new FieldProblems();
        if (await RequestReader.ReadAsync<LobeRequest>(http, problems) is not { } request)
            return problems.ToResult();
        var follower = CalcParts.Follower(request.Follower!, "follower", problems);
        if (CalcParts.Law(request.Lobe!, "lobe", problems) is not { } law || follower is not { } rides)
            return problems.ToResult();
        return Results.Ok(Answer(request, law, LobeContour.Of(law, rides, request.BaseCircleDiameterIn!.Value)));
    }

    private static LobeResponse Answer(LobeRequest request, LiftLaw law, LobeContour contour)
    {
        var against = Against(contour, request.WheelRadiusIn).ToList();
        return new LobeResponse(
            [.. (request.DurationsAtIn ?? UsualChecksIn).Select(at => new DurationAt(at, law.DurationCrankDeg(at)))],
            law.MaxVelocityInPerCamDeg, contour.MaxPressureAngleDeg, contour.MinFootRadiusIn,
            contour.MinConvexRadiusIn, contour.MinConcaveRadiusIn, against.Count == 0, against,
            request.StepCamDeg is { } step ? Points(law, contour, step) : null);
    }

    private static IEnumerable<string> Against(LobeContour contour, double? wheelRadiusIn)
    {
        if (contour.IsUndercut)
            yield return "The follower would undercut the lobe: the contour's least convex radius is not above zero.";
        if (wheelRadiusIn is { } wheel && !contour.WheelReaches(wheel))
            yield return FormattableString.Invariant($"The wheel's radius of {wheel:0.###} in does not go into the hollow flank of {contour.MinConcaveRadiusIn:0.###} in.");
    }

    private static List<LobePoint> Points(LiftLaw law, LobeContour contour, double step)
    {
        var count = (int)Math.Ceiling(360 / step - 1e-9);
        return [.. Enumerable.Range(0, count).Select(i => Point(law, contour, -180 + i * step))];
    }

    private static LobePoint Point(LiftLaw law, LobeContour contour, double camDeg)
    {
        var angle = camDeg * Math.PI / 180;
        return new LobePoint(Math.Round(camDeg, 9), law.At(angle).LiftIn, contour.PolarRadiusIn(angle));
    }
}
