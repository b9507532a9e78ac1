using GrindShop.Lobes;

namespace GrindShop.Web.Api;

internal sealed record TurnSpan(double Min, double Max);

internal sealed record Phase(double LobeSeparationCamDeg, double IntakeCenterlineCrankDeg);

internal sealed record WindowResponse(TurnSpan? IntakeTurnCamDeg, TurnSpan? ExhaustTurnCamDeg, IReadOnlyList<Phase> Corners, bool Inside, Phase? Nearest);

/// <summary>POST calc/window: which lobe separations and centrelines does a blank have metal for?</summary>
internal static class CalcWindow
{
    public static async Task<IResult> AnswerAsync(HttpRequest http)
    {
        var problems = new FieldProblems();
        if (await RequestReader.ReadAsync<WindowRequest>(http, problems) is not { } request)
            return problems.ToResult();
        return Question(request, problems) is { } question ? Results.Ok(Answer(GrindWindow.Of(question))) : problems.ToResult();
    }

    private static WindowQuestion? Question(WindowRequest request, FieldProblems problems)
    {
        var (blank, finish) = (request.Blank!, request.Finish!);
        BlankOutline? Metal(LobeHolder lobe, string name) => CalcParts.Milled(
            lobe.Lobe!, blank.Follower!, blank.BaseCircleDiameterIn!.Value, blank.StockIn!.Value, $"blank.{name}.lobe", "blank.follower", problems);
        FinishLobe? Wanted(LobeHolder lobe, string name) => CalcParts.Finish(lobe.Lobe!, finish.Follower!, $"finish.{name}.lobe", "finish.follower", problems);
        var (intakeMetal, exhaustMetal) = (Metal(blank.Intake!, "intake"), Metal(blank.Exhaust!, "exhaust"));
        var (intake, exhaust) = (Wanted(finish.Intake!, "intake"), Wanted(finish.Exhaust!, "exhaust"));
        if (intakeMetal is null || exhaustMetal is null || intake is null || exhaust is null)
            return null;
        var baseCircle = request.BaseCircleDiameterIn!.Value;
        return new WindowQuestion(
            intakeMetal, exhaustMetal, new CamPhase(blank.LobeSeparationCamDeg!.Value, blank.IntakeCenterlineCrankDeg!.Value),
            intake, exhaust, new CamPhase(finish.LobeSeparationCamDeg!.Value, finish.IntakeCenterlineCrankDeg!.Value),
            CalcParts.Limits(request.CleanupIn!.Value, request.CaseDepthIn, request.LeastCaseIn), baseCircle, baseCircle);
    }

    private static WindowResponse Answer(GrindWindow window) => new(
        Span(window.IntakeTurn), Span(window.ExhaustTurn), [.. window.Corners.Select(Point)], window.Inside, window.Nearest is { } nearest ? Point(nearest) : null);

    private static TurnSpan? Span(TurnRange? range) => range is { } turns ? new TurnSpan(turns.MinCamDeg, turns.MaxCamDeg) : null;

    private static Phase Point(CamPhase phase) => new(phase.LobeSeparationCamDeg, phase.IntakeCenterlineCrankDeg);
}
