using GrindShop.Lobes;
using GrindShop.Shop.Feasibility;

namespace GrindShop.Web.Drawings;

/// <summary>The lobe separations and intake centrelines that a milled blank has metal for, on given base circles.</summary>
/// <param name="Window">The parallelogram; without corners where a lobe fits at no turn.</param>
/// <param name="Blank">What the blank was milled for.</param>
/// <param name="Wanted">What is asked for.</param>
/// <param name="IntakeBaseCircleDiameterIn">Base circle of the intake lobe, in.</param>
/// <param name="ExhaustBaseCircleDiameterIn">Base circle of the exhaust lobe, in.</param>
public sealed record BlankWindow(GrindWindow Window, CamPhase Blank, CamPhase Wanted, double IntakeBaseCircleDiameterIn, double ExhaustBaseCircleDiameterIn)
{
    /// <summary>Null for a full-round blank: its lobes may stand anywhere.</summary>
    /// <param name="cam">The cam wanted.</param>
    /// <param name="blank">The blank.</param>
    /// <param name="section">The cam as the blank would be ground, on the largest base circles that clean up.</param>
    /// <param name="rules">The shop's clean-up and least case.</param>
    /// <param name="smallerByIn">How much smaller the base circles are ground than the largest, in: on those nothing is left to turn the lobes in.</param>
    public static BlankWindow? Of(FinishedCam cam, PreparedBlank blank, CamSection section, ShopRules rules, double smallerByIn)
    {
        if (blank.Part.Nominal is not { } nominal)
            return null;
        var milled = new CamPhase(nominal.LobeSeparationCamDeg, nominal.IntakeCenterlineCrankDeg);
        var wanted = new CamPhase(cam.Grind.LobeSeparationCamDeg, cam.Grind.IntakeCenterlineCrankDeg);
        var (intakeIn, exhaustIn) = (WheelRanges.ToSetIn(section.Intake.BaseCircleDiameterIn) - smallerByIn, WheelRanges.ToSetIn(section.Exhaust.BaseCircleDiameterIn) - smallerByIn);
        var window = GrindWindow.Of(new WindowQuestion(
            blank.Intake, blank.Exhaust, milled, cam.Intake, cam.Exhaust, wanted, rules.Limits(blank), intakeIn, exhaustIn));
        return new BlankWindow(window, milled, wanted, intakeIn, exhaustIn);
    }
}
