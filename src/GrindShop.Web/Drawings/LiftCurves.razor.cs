using System.Globalization;
using GrindShop.Lobes;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Drawings;

public sealed partial class LiftCurves
{
    private LiftPlot _plot = default!;

    [Parameter, EditorRequired]
    public LiftLaw Intake { get; set; } = default!;

    [Parameter, EditorRequired]
    public LiftLaw Exhaust { get; set; } = default!;

    [Parameter, EditorRequired]
    public ValveEvents Events { get; set; } = default!;

    /// <summary>Unique on the page.</summary>
    [Parameter, EditorRequired]
    public string Id { get; set; } = "";

    private string Words => $"Intake lifter lift {In(Intake.LobeLiftIn)}, centred {Deg(Events.IntakeCenterlineCrankDeg)} after top dead centre; " +
        $"exhaust lifter lift {In(Exhaust.LobeLiftIn)}, centred {Deg(Events.ExhaustCenterlineCrankDeg)} before it.";

    protected override void OnParametersSet() => _plot = new LiftPlot(Intake, Exhaust, Events);

    private string X(double crankDeg) => N(_plot.Axis.X(crankDeg));

    private static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string In(double value) => value.ToString("0.000", CultureInfo.InvariantCulture) + " in";

    private static string Deg(double value) => value.ToString("0.#", CultureInfo.InvariantCulture) + "°";
}
