using GrindShop.Lobes;

namespace GrindShop.Web.Api;

internal sealed record TimingResponse(
    double IntakeOpensBtdc, double IntakeClosesAbdc, double ExhaustOpensBbdc, double ExhaustClosesAtdc, double OverlapCrankDeg, double ExhaustCenterlineCrankDeg, double AdvanceCrankDeg);

/// <summary>POST calc/timing: valve events of a cam, crank degrees.</summary>
internal static class CalcTiming
{
    public static async Task<IResult> AnswerAsync(HttpRequest http)
    {
        var problems = new FieldProblems();
        if (await RequestReader.ReadAsync<TimingRequest>(http, problems) is not { } request)
            return problems.ToResult();
        var (lsa, icl) = (request.LobeSeparationCamDeg!.Value, request.IntakeCenterlineCrankDeg!.Value);
        if (Math.Abs(lsa - icl) > ValveEvents.MostAdvanceCrankDeg)
        {
            problems.Add("intakeCenterlineCrankDeg", FormattableString.Invariant(
                $"intakeCenterlineCrankDeg must lie within {ValveEvents.MostAdvanceCrankDeg} of the lobe separation: between {lsa - ValveEvents.MostAdvanceCrankDeg} and {lsa + ValveEvents.MostAdvanceCrankDeg} crank degrees."));
            return problems.ToResult();
        }
        var events = ValveEvents.Of(request.IntakeDurationCrankDeg!.Value, request.ExhaustDurationCrankDeg!.Value, lsa, icl);
        return Results.Ok(new TimingResponse(
            events.IntakeOpensBtdc, events.IntakeClosesAbdc, events.ExhaustOpensBbdc, events.ExhaustClosesAtdc, events.OverlapCrankDeg, events.ExhaustCenterlineCrankDeg, events.AdvanceCrankDeg));
    }
}
