using System.Globalization;
using GrindShop.Lobes;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Drawings;

public sealed partial class TimingDiagram
{
    private static readonly IReadOnlyList<(double At, string Words)> Marks = [(-180, "BDC"), (0, "TDC (overlap)"), (180, "BDC")];
    private CrankAxis _axis = default!;
    private Openings _intake, _exhaust;

    [Parameter, EditorRequired]
    public ValveEvents Events { get; set; } = default!;

    /// <summary>Unique on the page.</summary>
    [Parameter, EditorRequired]
    public string Id { get; set; } = "";

    protected override void OnParametersSet()
    {
        _axis = CrankAxis.For(Events);
        (_intake, _exhaust) = (Openings.Intake(Events), Openings.Exhaust(Events));
    }

    private string X(double crankDeg) => N(_axis.X(crankDeg));

    private string Span(double from, double to) => N(_axis.X(to) - _axis.X(from));

    private static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
