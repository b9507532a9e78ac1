using System.Globalization;
using GrindShop.Lobes;
using GrindShop.Web.Drawings;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Public;

public sealed partial class ContactStudy
{
    private static readonly IReadOnlyList<(string, string)> LobeChoices = [("exhaust", "Exhaust")];
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(300);

    private readonly LatestOnly _asked = new();
    private readonly SpecDraft _draft = TrainFields.Example();
    private FieldSource _source = default!;
    private JudgedSpec? _of;
    private ContactCurve? _curve;
    private bool _undercut;

    [Parameter, EditorRequired]
    public JudgedSpec Judged { get; set; } = default!;

    [Inject]
    private TimeProvider Clock { get; set; } = default!;

    private string Width => Judged.Cam.Family.LobeWidthIn.ToString("0.000", CultureInfo.InvariantCulture) + " in";

    private bool IsFlat => Judged.Cam.Intake.Follower.Kind == FollowerKind.Flat;

    public void Dispose() => _asked.Dispose();

    protected override void OnInitialized() => Read();

    protected override Task OnParametersSetAsync()
    {
        if (ReferenceEquals(_of, Judged))
            return Task.CompletedTask;
        _of = Judged;
        return ComputeAsync(_asked.Next());
    }

    private void Read() => _source = new FieldSource(_draft, TrainFields.Problems(_draft), [], EventCallback.Factory.Create(this, TypedAsync));

    private async Task TypedAsync()
    {
        Read();
        var cancel = _asked.Next();
        await Task.Delay(Pause, Clock, cancel);
        await ComputeAsync(cancel);
    }

    private async Task ComputeAsync(CancellationToken cancel)
    {
        if (_source.Problems.Count > 0 || Judged is not { Drawing: { } drawing, Shown: { } shown } || Judged.Content.Blank(shown.PartNumber) is not { } blank)
            return;
        var (grind, isIntake) = (Judged.Cam.Grind, _draft["contact.lobe"].Length == 0);
        var lobe = isIntake ? Judged.Cam.Intake : Judged.Cam.Exhaust;
        var diameterIn = (isIntake ? drawing.Intake : drawing.Exhaust).BaseCircleDiameterIn;
        var train = TrainFields.Train(_draft, lobe.Law.LobeLiftIn, grind.RockerRatio, isIntake ? grind.IntakeLashIn : grind.ExhaustLashIn);
        var (alloy, rpm, widthIn) = (blank.Part.Alloy.Kernel(), TrainFields.Rpm(_draft), Judged.Cam.Family.LobeWidthIn);
        var curve = await Task.Run(() => Curve(lobe, diameterIn, train, alloy, widthIn, rpm), cancel);
        cancel.ThrowIfCancellationRequested();
        (_curve, _undercut) = (curve, curve is null);
    }

    /// <summary>Null where the lifter would undercut the lobe.</summary>
    private static ContactCurve? Curve(FinishLobe lobe, double diameterIn, ValveTrain train, CamAlloy alloy, double widthIn, double rpm)
    {
        var contour = LobeContour.Of(lobe.Law, lobe.Follower, diameterIn);
        if (contour.IsUndercut)
            return null;
        var isRoller = lobe.Follower.Kind == FollowerKind.Roller;
        var face = new FollowerFace(widthIn, isRoller ? lobe.Follower.RadiusIn : null, ElasticConstants.Steel, ElasticConstants.Of(alloy));
        var profile = ContactProfile.Of(LobeStations.Of(lobe, contour), train, face, rpm);
        return new ContactCurve(profile, ContactAdvice.For(alloy, isRoller ? FollowerMotion.Rolling : FollowerMotion.Sliding));
    }
}
