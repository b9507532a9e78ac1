using GrindShop.Lobes;

namespace GrindShop.Web.Api;

internal sealed record MasterEntry(double BaseCircleDiameterIn, double WheelRadiusIn, IReadOnlyList<DurationAt> Durations, double LobeLiftIn, bool IsSound);

internal sealed record MasterResponse(IReadOnlyList<MasterEntry> Results);

/// <summary>POST calc/master: what a stored wheel motion gives on another base circle or with a worn wheel.</summary>
internal static class CalcMaster
{
    public static async Task<IResult> AnswerAsync(HttpRequest http)
    {
        var problems = new FieldProblems();
        if (await RequestReader.ReadAsync<MasterRequest>(http, problems) is not { } request)
            return problems.ToResult();
        var follower = CalcParts.Follower(request.Follower!, "follower", problems);
        if (CalcParts.Law(request.Lobe!, "lobe", problems) is not { } law || follower is not { } rides)
            return problems.ToResult();
        var results = MasterLobe.Results(law, rides, Setting(request.MadeAt!), request.GroundAt!.Select(Setting), request.DurationsAtIn!);
        return Results.Ok(new MasterResponse([.. results.Select(Entry)]));
    }

    private static WheelSetting Setting(WheelFields fields) => new(fields.BaseCircleDiameterIn!.Value, fields.WheelRadiusIn!.Value);

    private static MasterEntry Entry(MasterResult result) => new(
        result.GroundAt.BaseCircleDiameterIn, result.GroundAt.WheelRadiusIn, [.. result.Durations.Select(d => new DurationAt(d.AtIn, d.CrankDeg))], result.LobeLiftIn, result.IsSound);
}
