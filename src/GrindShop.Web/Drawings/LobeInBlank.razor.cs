using System.Globalization;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Drawings;

public sealed partial class LobeInBlank
{
    private LobePicture _picture = default!;

    [Parameter, EditorRequired]
    public LobeSection Section { get; set; } = default!;

    /// <summary>Give the same to drawings that are compared; left out, the drawing is as large as it can be.</summary>
    [Parameter]
    public LobeReach? Reach { get; set; }

    /// <summary>Unique on the page.</summary>
    [Parameter, EditorRequired]
    public string Id { get; set; } = "";

    /// <summary>A place on the finished lobe to mark.</summary>
    [Parameter]
    public LobeReading? At { get; set; }

    /// <summary>How many times the drawing is enlarged round the marked place; 1 shows it whole.</summary>
    [Parameter]
    public double Zoom { get; set; } = 1;

    private string ViewBox => _picture.ViewBox(Zoom, At is { } at ? _picture.Place(at.Point) : _picture.Axis);

    private string Capital => Section.Name == "intake" ? "Intake" : "Exhaust";

    protected override void OnParametersSet() => _picture = new LobePicture(Section, Reach ?? LobeReach.Of(Section));

    private static string Leader(double x, double y, PicturePoint to) => $"M{N(x)} {N(y)}L{N(to.X)} {N(to.Y)}";

    private static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string In(double value) => value.ToString("0.000", CultureInfo.InvariantCulture) + " in";
}
