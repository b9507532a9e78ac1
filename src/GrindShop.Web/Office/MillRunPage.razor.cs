using GrindShop.Shop;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Buying;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Office;

/// <summary>A large purchase now against alternatives as needed, on assumptions that start from the shop's books.</summary>
public sealed partial class MillRunPage : LivePage
{
    private IReadOnlyList<BlankPart> _parts = [];
    private BlankPart? _newer;
    private MillRunFacts? _facts;
    private MillRunForm? _form;
    private MillRun? _run;
    private Refusal? _refusal;
    private string? _read;

    [Inject]
    private MillRunBook Book { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [SupplyParameterFromQuery]
    private string? Part { get; set; }

    protected override async Task ReadAsync()
    {
        var content = await Catalog.ContentAsync();
        _parts = [.. content.Blanks.Select(each => each.Part).Where(part => !content.Succession.IsReplaced(part)).OrderBy(part => part.EngineFamily.Name).ThenBy(part => part.PartNumber)];
        if (Part != _read)
            await OpenAsync();
    }

    protected override Task OnParametersSetAsync() => _parts.Count > 0 && Part != _read ? OpenAsync() : Task.CompletedTask;

    /// <summary>What is typed belongs to one part; it stays while the shop goes on and falls away with the part.</summary>
    private async Task OpenAsync()
    {
        var part = Part;
        var content = await Catalog.ContentAsync();
        _newer = part is not null && content.Blank(part) is { } blank ? content.Succession.SuccessorOf(blank.Part) : null;
        _facts = string.IsNullOrEmpty(part) ? null : await Book.FindAsync(part);
        _form = _facts is null ? null : new MillRunForm(_facts);
        _read = part;
        Compute();
    }

    private void Compute()
    {
        var assumed = _form?.Read();
        _refusal = assumed?.Refusal;
        _run = assumed?.Value is { } known ? new MillRun(known) : null;
    }

    private void Choose(string? part) => Navigation.NavigateTo($"/office/millrun?part={Uri.EscapeDataString(part ?? "")}");
}
