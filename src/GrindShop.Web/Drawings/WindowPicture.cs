using System.Globalization;
using GrindShop.Lobes;

namespace GrindShop.Web.Drawings;

/// <summary>A window laid out for drawing: lobe separation to the right, intake centreline upwards.</summary>
public sealed class WindowPicture
{
    private const double RoomDeg = 1;
    private readonly BlankWindow _window;

    public WindowPicture(BlankWindow window)
    {
        _window = window;
        List<CamPhase> shown = [window.Blank, window.Wanted, .. window.Window.Corners];
        X = PlotFrame.Across(shown.Min(p => p.LobeSeparationCamDeg) - RoomDeg, shown.Max(p => p.LobeSeparationCamDeg) + RoomDeg);
        Y = PlotFrame.Up(shown.Min(p => p.IntakeCenterlineCrankDeg) - RoomDeg, shown.Max(p => p.IntakeCenterlineCrankDeg) + RoomDeg);
    }

    public PlotAxis X { get; }

    public PlotAxis Y { get; }

    /// <summary>Path data of the parallelogram; empty where the window is.</summary>
    public string Outline => _window.Window.Corners.IsEmpty ? "" : SvgPath.Closed(_window.Window.Corners.Select(Place).Select(p => (p.X, -p.Y)), 1);

    public PicturePoint Blank => Place(_window.Blank);

    public PicturePoint Wanted => Place(_window.Wanted);

    /// <summary>Null where the wanted point lies inside, or nothing does.</summary>
    public PicturePoint? Nearest => _window.Window is { Inside: false, Nearest: { } nearest } ? Place(nearest) : null;

    public PicturePoint Place(CamPhase phase) => new(X.At(phase.LobeSeparationCamDeg), Y.At(phase.IntakeCenterlineCrankDeg));

    /// <summary>The drawing in words.</summary>
    public string Description => string.Join(' ', Sentences());

    public static string Say(CamPhase phase) => string.Create(
        CultureInfo.InvariantCulture, $"lobe separation {phase.LobeSeparationCamDeg:0.0#}° and intake centreline {phase.IntakeCenterlineCrankDeg:0.0#}°");

    private IEnumerable<string> Sentences()
    {
        yield return $"The blank was milled for {Say(_window.Blank)}; wanted are {Say(_window.Wanted)}.";
        yield return _window.Window switch
        {
            { Corners.IsEmpty: true } => "On these base circles there is no separation and centreline that the blank has metal for.",
            { Inside: true } => "The wanted point lies inside the window.",
            { Nearest: { } nearest } => $"The wanted point lies outside the window; the nearest point inside is {Say(nearest)}.",
            _ => "The wanted point lies outside the window.",
        };
    }
}
