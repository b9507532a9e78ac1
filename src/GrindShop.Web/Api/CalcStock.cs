using GrindShop.Lobes;

namespace GrindShop.Web.Api;

internal sealed record StockResponse(
    double MaxBaseCircleDiameterIn, double BaseCircleDiameterIn, double MinRemovalIn, double MaxRemovalIn, double? LeastCaseLeftIn, bool Fits, IReadOnlyList<string> Problems);

/// <summary>POST calc/stock: does one lobe come out of one blank's lobe?</summary>
internal static class CalcStock
{
    public static async Task<IResult> AnswerAsync(HttpRequest http)
    {
        var problems = new FieldProblems();
        if (await RequestReader.ReadAsync<StockRequest>(http, problems) is not { } request)
            return problems.ToResult();
        var blank = CalcParts.Blank(request.Blank!, problems);
        var finish = CalcParts.Finish(request.Finish!.Lobe!, request.Finish.Follower!, "finish.lobe", "finish.follower", problems);
        if (blank is null || finish is null)
            return problems.ToResult();
        var limits = CalcParts.Limits(request.CleanupIn!.Value, request.CaseDepthIn, request.LeastCaseIn);
        return Results.Ok(Answer(MetalBand.Judge(blank, finish, request.TurnCamDeg ?? 0, limits, request.BaseCircleDiameterIn), limits));
    }

    private static StockResponse Answer(BandAnswer band, BandLimits limits) => new(
        band.MaxBaseCircleDiameterIn, band.BaseCircleDiameterIn, band.MinRemovalIn, band.MaxRemovalIn, band.LeastCaseLeftIn, band.Fits, [.. Against(band, limits)]);

    private static IEnumerable<string> Against(BandAnswer band, BandLimits limits)
    {
        if (band.MaxBaseCircleDiameterIn <= 0)
            yield return "The lobe does not come out of this blank at any base circle.";
        else if (!band.InsideOutsideEdge)
            yield return FormattableString.Invariant($"The base circle must be {band.MaxBaseCircleDiameterIn:0.0000} in or less for a clean-up of {limits.CleanupIn:0.000} in everywhere.");
        if (!band.CaseKept)
            yield return FormattableString.Invariant($"Up to {band.MaxRemovalIn:0.000} in comes off; {limits.MostRemovalIn:0.000} in is the most that keeps the case.");
        if (band.Undercut)
            yield return "At this base circle the follower would undercut the lobe.";
    }
}
