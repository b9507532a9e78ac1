using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Web.Shell;

namespace GrindShop.Web.Desk;

/// <summary>The figures of a used cam while they are typed; complete as soon as every lobe has its own.</summary>
public sealed class MeasuredDraft
{
    public double? BaseCircle { get; set; }

    public double? IntakeLift { get; set; }

    public double? ExhaustLift { get; set; }

    public double? IntakeDuration { get; set; }

    public double? ExhaustDuration { get; set; }

    public BlankAlloy Alloy { get; set; } = BlankAlloy.HardenableIron;

    public Hardening Hardening { get; set; } = Hardening.ToTheBarrel;

    public double? CaseLeft { get; set; }

    /// <summary>Null while a figure is missing.</summary>
    public MeasuredCam? Measured => (BaseCircle, IntakeLift, ExhaustLift, IntakeDuration, ExhaustDuration) is ({ } circle, { } intake, { } exhaust, { } intakeDuration, { } exhaustDuration)
        ? new MeasuredCam
        {
            BaseCircleDiameterIn = circle,
            IntakeLobeLiftIn = intake,
            ExhaustLobeLiftIn = exhaust,
            IntakeDurationAt050CrankDeg = intakeDuration,
            ExhaustDurationAt050CrankDeg = exhaustDuration,
            Alloy = Alloy,
            Hardening = Hardening,
            CaseLeftIn = CaseLeft,
        }
        : null;

    /// <inheritdoc cref="WorkDraft.Follow"/>
    public void Follow(MeasuredDraft was, MeasuredDraft newer)
    {
        BaseCircle = Carry.Of(was.BaseCircle, BaseCircle, newer.BaseCircle);
        IntakeLift = Carry.Of(was.IntakeLift, IntakeLift, newer.IntakeLift);
        ExhaustLift = Carry.Of(was.ExhaustLift, ExhaustLift, newer.ExhaustLift);
        IntakeDuration = Carry.Of(was.IntakeDuration, IntakeDuration, newer.IntakeDuration);
        ExhaustDuration = Carry.Of(was.ExhaustDuration, ExhaustDuration, newer.ExhaustDuration);
        Alloy = Carry.Of(was.Alloy, Alloy, newer.Alloy);
        Hardening = Carry.Of(was.Hardening, Hardening, newer.Hardening);
        CaseLeft = Carry.Of(was.CaseLeft, CaseLeft, newer.CaseLeft);
    }

    public static MeasuredDraft Of(MeasuredCam? cam) => cam is null ? new MeasuredDraft() : new MeasuredDraft
    {
        BaseCircle = cam.BaseCircleDiameterIn,
        IntakeLift = cam.IntakeLobeLiftIn,
        ExhaustLift = cam.ExhaustLobeLiftIn,
        IntakeDuration = cam.IntakeDurationAt050CrankDeg,
        ExhaustDuration = cam.ExhaustDurationAt050CrankDeg,
        Alloy = cam.Alloy,
        Hardening = cam.Hardening,
        CaseLeft = cam.CaseLeftIn,
    };
}
