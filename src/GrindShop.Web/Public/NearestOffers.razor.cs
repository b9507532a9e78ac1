using System.Globalization;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Public;

/// <summary>The closest cams that do come out of a blank; one click puts an offer's figures into the form.</summary>
public sealed partial class NearestOffers
{
    /// <summary>The cam as it stands in the form.</summary>
    [Parameter, EditorRequired]
    public CamSpec Wish { get; set; } = default!;

    [Parameter, EditorRequired]
    public IReadOnlyList<NearestGrind> Nearest { get; set; } = [];

    /// <summary>Receives the wish with the figures of the offer that was taken.</summary>
    [Parameter]
    public EventCallback<CamSpec> OnTake { get; set; }

    private static string Heading(NearestGrind offer) => string.Create(CultureInfo.InvariantCulture,
        $"{offer.Grind.Intake.DurationAt050CrankDeg:0.#}/{offer.Grind.Exhaust.DurationAt050CrankDeg:0.#} crank degrees at .050, lobe lift {offer.Grind.Intake.LobeLiftIn:.000#}/{offer.Grind.Exhaust.LobeLiftIn:.000#} in, lobe separation {offer.Grind.LobeSeparationCamDeg:0.##} cam degrees, intake centreline {offer.Grind.IntakeCenterlineCrankDeg:0.##} crank degrees,");

    private static string BaseCircles(BlankFit fit) => string.Create(CultureInfo.InvariantCulture,
        $"Base circle {fit.IntakeBaseCircleDiameterIn:0.000} in intake, {fit.ExhaustBaseCircleDiameterIn:0.000} in exhaust.");
}
