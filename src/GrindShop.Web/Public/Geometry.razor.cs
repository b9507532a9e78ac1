using System.Globalization;
using GrindShop.Lobes;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.WebUtilities;

namespace GrindShop.Web.Public;

public sealed partial class Geometry
{
    /// <summary>A pause in typing after which the drawings follow.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(250);

    private readonly LatestOnly _typing = new();
    private SpecDraft _draft = new();
    private SpecReading _reading = SpecReading.Nothing;
    private IReadOnlyList<EngineFamily> _families = [];
    private IReadOnlyList<FieldProblem> _ignored = [];
    private CamGeometry? _shown;
    private string? _blank;
    private bool _startsOpen;

    /// <summary>What was typed, kept from the first static picture of the page on and through a lost connection.</summary>
    [PersistentState]
    public Dictionary<string, string>? Kept { get; set; }

    [Inject]
    private Catalog Catalog { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [Inject]
    private TimeProvider Clock { get; set; } = default!;

    private string Link => SpecQuery.Link(_reading.Spec, _shown?.Judged.Shown?.PartNumber);

    private string Status => _shown is not null ? $"The drawings show {CamWords}" : "The drawings come when the cam is described";

    /// <summary>What a field is told about the link, until something is typed there.</summary>
    private IReadOnlyList<FieldProblem> IgnoredStill => [.. _ignored.Where(problem => _draft.Text(problem.Field) is null)];

    private string CamWords => _reading.Grind is { } grind
        ? string.Create(CultureInfo.InvariantCulture,
            $"{_reading.Family?.Name}, {grind.Lifter.Words()}, {Lobe(grind.Intake)} intake, {Lobe(grind.Exhaust)} exhaust, separation {grind.LobeSeparationCamDeg:0.#}°, intake centreline {grind.IntakeCenterlineCrankDeg:0.#}°")
        : "not described yet";

    public void Dispose() => _typing.Dispose();

    protected override async Task OnInitializedAsync()
    {
        var content = await Catalog.ContentAsync();
        _families = content.Families;
        var query = new Uri(Navigation.Uri).Query;
        var read = SpecQuery.Read(query, content);
        _ignored = read.Ignored;
        _blank = QueryHelpers.ParseQuery(query).TryGetValue(SpecQuery.BlankKey, out var blank) ? blank.ToString() : null;
        Kept ??= read.Draft.Texts;
        _draft = new SpecDraft(Kept);
        _reading = SpecReading.Of(_draft, content);
        _startsOpen = _reading.Grind is null;
        await JudgeAsync(_typing.Current);
    }

    private static string Lobe(LobeSpec lobe) => string.Create(CultureInfo.InvariantCulture, $"{lobe.DurationAt050CrankDeg:0.#}° at .050 and {lobe.LobeLiftIn:0.000} in");

    private async Task TypedAsync()
    {
        var cancel = _typing.Next();
        await Task.Delay(Pause, Clock, cancel);
        _reading = SpecReading.Of(_draft, await Catalog.ContentAsync(cancel));
        StateHasChanged();
        await JudgeAsync(cancel);
    }

    /// <summary>The drawings of what stands there now; the old ones stay in view until the new ones are known.</summary>
    private async Task JudgeAsync(CancellationToken cancel)
    {
        if (_reading.Grind is not { } grind)
            _shown = null;
        else if (_shown?.Judged.Answer.Grind != grind)
            await DrawAsync(await JudgedSpec.OfAsync(Catalog, grind, cancel), cancel);
    }

    private async Task ShowAsync(string? partNumber)
    {
        _blank = partNumber;
        if (_shown is { Judged: var judged })
            await DrawAsync(judged, _typing.Next());
    }

    private async Task DrawAsync(JudgedSpec judged, CancellationToken cancel)
    {
        var wished = judged.Answer.Blanks.FirstOrDefault(fit => fit.PartNumber == _blank) ?? judged.Shown;
        var drawn = await CamGeometry.OfAsync(judged, wished, cancel);
        cancel.ThrowIfCancellationRequested();
        _shown = drawn;
    }
}
