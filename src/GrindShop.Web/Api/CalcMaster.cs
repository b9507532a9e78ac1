using GrindShop.Lobes;

namespace GrindShop.Web.Api;

internal sealed record MasterEntry(double BaseCircleDiameterIn, double WheelRadiusIn, IReadOnlyList<DurationAt> Durations, double LobeLiftIn, bool IsSound);

internal sealed record MasterResponse(IReadOnlyList<MasterEntry> Results);

/// <summary>POST calc/master: what a stored wheel motion gives on another base circle or with a worn wheel.</summary>
internal static class CalcMaster
{
    private const int MostAnswers = 100;

    public static async Task<IResult> AnswerAsync(HttpRequest http)
    {
        var problems = new FieldProblems();
        if (await RequestReader.ReadAsync<MasterRequest>(http, problems) is not { } request)
            return problems.ToResult();
        var follower = CalcParts.Follower(request.Follower!, "follower", problems);
        if (CalcParts.Law(request.Lobe!, "lobe", problems) is not { } law || follower is not { } rides)
            return problems.ToResult();
        if (request.GroundAt!.Length * request.DurationsAtIn!.Length > MostAnswers)
        {
            problems.Add("groundAt", $"groundAt times durationsAtIn must be at most {MostAnswers}: ask in parts.");
            return problems.ToResult();
        }
        var results = MasterLobe.Results(law, rides, Setting(request.MadeAt!, default), request.GroundAt.Select(wheel => Setting(wheel, http.HttpContext.RequestAborted)), request.DurationsAtIn);
        return Results.Ok(new MasterResponse([.. results.Select(Entry)]));
    }

    /// <summary>Settings are computed one by one; a caller who has left ends the work.</summary>
    private static WheelSetting Setting(WheelFields fields, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        return new(fields.BaseCircleDiameterIn!.Value, fields.WheelRadiusIn!.Value);
    }

    private static MasterEntry Entry(MasterResult result) => new(
        result.GroundAt.BaseCircleDiameterIn, result.GroundAt.WheelRadiusIn, [.. result.Durations.Select(d => new DurationAt(d.AtIn, d.CrankDeg))], result.LobeLiftIn, result.IsSound);
}
