using System.Globalization;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Starting;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Public;

public sealed partial class SpecInput
{
    [CascadingParameter]
    private FieldSource Source { get; set; } = default!;

    /// <summary>The field's path in the specification, the one that problems name.</summary>
    [Parameter, EditorRequired]
    public string Path { get; set; } = "";

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    [Parameter]
    public string? Hint { get; set; }

    /// <summary>A number with this range; shown beside the hint.</summary>
    [Parameter]
    public FieldRange? Range { get; set; }

    /// <summary>A choice among these values (value, words).</summary>
    [Parameter]
    public IEnumerable<(string Value, string Words)>? Options { get; set; }

    /// <summary>What the blank choice says.</summary>
    [Parameter]
    public string Blank { get; set; } = "Choose…";

    [Parameter]
    public bool Required { get; set; }

    [Parameter]
    public bool Wide { get; set; }

    [Parameter]
    public int Lines { get; set; } = 1;

    [Parameter]
    public int? Longest { get; set; }

    [Parameter]
    public string Type { get; set; } = "text";

    [Parameter]
    public string Autocomplete { get; set; } = "off";

    /// <summary>What stands greyed in the empty field where the shop fills nothing in.</summary>
    [Parameter]
    public string? Usual { get; set; }

    private string Id => FieldIds.Of(Path);

    private string Value => Source.Draft[Path];

    private string? Problem => Source.ProblemOf(Path);

    private FilledField? Filled => Source.FilledOf(Path);

    private StartFigure? Started => Source.StartedOf(Path);

    private string? Help => Source.Explains ? FieldHelp.Of(Path) : null;

    private string? InputMode => Range is null ? null : Range.Least < 0 ? "text" : "decimal";

    private string? Placeholder => Filled?.Value ?? Usual;

    private string? Invalid => Problem is null ? null : "true";

    private string? NeededFlag => Required ? "true" : null;

    private string? HintText => Range is null ? Hint : string.Create(CultureInfo.InvariantCulture, $"{Hint} {Range.Least:0.###} to {Range.Most:0.###} {Range.Unit}.");

    private string? DescribedBy => string.Join(' ', Parts()) is { Length: > 0 } ids ? ids : null;

    private IEnumerable<string> Parts()
    {
        if (Problem is not null)
            yield return $"{Id}-problem";
        if (Filled is not null)
            yield return $"{Id}-filled";
        if (Started is not null)
            yield return $"{Id}-started";
        if (HintText is { Length: > 0 })
            yield return $"{Id}-hint";
        if (Help is not null)
            yield return $"{Id}-help";
    }

    private Task ChangeAsync(string? text)
    {
        Source.Draft[Path] = text ?? "";
        return Source.Changed.InvokeAsync();
    }
}
