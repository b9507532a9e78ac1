using GrindShop.Lobes;
using GrindShop.Shop.Specs;
using GrindShop.Web.Drawings;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Public;

public sealed partial class MasterStudy
{
    private static readonly IReadOnlyList<(string, string)> LobeChoices = [("exhaust", "Exhaust")];
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(300);

    private readonly LatestOnly _asked = new();
    private readonly SpecDraft _draft = new()
    {
        ["master.made"] = NumberText.Write(WheelRanges.UsualRadiusIn),
        ["master.now"] = NumberText.Write(WheelRanges.WornRadiusIn),
    };

    private FieldSource _source = default!;
    private JudgedSpec? _of;
    private MasterTrend? _trend;
    private int _done, _all;

    [Parameter, EditorRequired]
    public JudgedSpec Judged { get; set; } = default!;

    [Inject]
    private TimeProvider Clock { get; set; } = default!;

    private string Intro => Judged.Cam.Grind.Lifter.IsRoller()
        ? "The grinder repeats the wheel motion of its master. On a smaller base circle, or with a worn wheel, the same motion leaves another contour, and under a roller other durations."
        : "The grinder repeats the wheel motion of its master. Under a flat tappet the durations hardly change with the base circle.";

    public void Dispose() => _asked.Dispose();

    protected override void OnInitialized() => Read();

    /// <summary>The first, static picture of the page does not wait for it.</summary>
    protected override Task OnParametersSetAsync()
    {
        if (!RendererInfo.IsInteractive || ReferenceEquals(_of, Judged))
            return Task.CompletedTask;
        _of = Judged;
        return ComputeAsync(_asked.Next());
    }

    private void Read() => _source = new FieldSource(_draft, [.. Problem("master.made"), .. Problem("master.now")], [], EventCallback.Factory.Create(this, TypedAsync));

    private IEnumerable<FieldProblem> Problem(string path) =>
        NumberText.TryRead(_draft[path], out var value) && value is not null && WheelRanges.Radius.Check(value, path) is null ? [] : [new FieldProblem(path, WheelRanges.Radius.Sentence)];

    private async Task TypedAsync()
    {
        Read();
        var cancel = _asked.Next();
        await Task.Delay(Pause, Clock, cancel);
        await ComputeAsync(cancel);
    }

    /// <summary>One setting after another, away from the thread that serves the page, so that the next keystroke can stop it.</summary>
    private async Task ComputeAsync(CancellationToken cancel)
    {
        if (_source.Problems.Count > 0 || Judged.Drawing is not { } drawing)
            return;
        var (grind, isIntake) = (Judged.Cam.Grind, _draft["master.lobe"].Length == 0);
        var lobe = isIntake ? Judged.Cam.Intake : Judged.Cam.Exhaust;
        var madeAt = new WheelSetting((isIntake ? drawing.Intake : drawing.Exhaust).BaseCircleDiameterIn, Number("master.made"));
        double[] checks = [LobeSpec.UsualCheckLiftIn, (isIntake ? grind.Intake : grind.Exhaust).AdvertisedAtIn];
        var settings = MasterTrend.SettingsOf(madeAt.BaseCircleDiameterIn, LeastIn(madeAt, lobe), madeAt.WheelRadiusIn, Number("master.now")).ToList();
        var results = new List<MasterResult>();
        (_done, _all) = (0, settings.Count);
        foreach (var setting in settings)
        {
            results.AddRange(await Task.Run(() => MasterLobe.Results(lobe.Law, lobe.Follower, madeAt, [setting], checks), cancel));
            cancel.ThrowIfCancellationRequested();
            _done = results.Count;
            StateHasChanged();
        }
        _trend = MasterTrend.Of(madeAt, checks, results);
    }

    /// <summary>The family's least base circle, or a tenth of an inch down where the lobe stands there already.</summary>
    private double LeastIn(WheelSetting madeAt, FinishLobe lobe)
    {
        var least = Judged.Cam.Family.LeastBaseCircleIn;
        return Math.Max(lobe.LeastBaseCircleDiameterIn, madeAt.BaseCircleDiameterIn - least > .02 ? least : madeAt.BaseCircleDiameterIn - .1);
    }

    private double Number(string path) => NumberText.TryRead(_draft[path], out var value) && value is { } number ? number : WheelRanges.UsualRadiusIn;
}
