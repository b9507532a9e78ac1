using Microsoft.AspNetCore.Components.Forms;

namespace GrindShop.Web.Office;

/// <summary>
/// A field to choose a file with. It is disabled until the browser listens to it: a file chosen between the drawing of the page and that moment
/// would be lost without a word.
/// </summary>
public sealed class FileField : InputFile
{
    private bool _listens;

    protected override void OnParametersSet() =>
        AdditionalAttributes = new Dictionary<string, object>(AdditionalAttributes ?? new Dictionary<string, object>()) { ["disabled"] = !_listens };

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        await base.OnAfterRenderAsync(firstRender);
        if (!firstRender)
            return;
        _listens = true;
        OnParametersSet();
        StateHasChanged();
    }
}
