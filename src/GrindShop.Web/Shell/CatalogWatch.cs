using GrindShop.Shop.Records;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Shell;

/// <summary>Stands unseen on a page that answers from the catalog and calls it when engines, blanks, rules or settings have changed.</summary>
public sealed class CatalogWatch : ComponentBase, IDisposable
{
    /// <summary>Reads and judges anew; runs on the page's own thread.</summary>
    [Parameter, EditorRequired]
    public EventCallback Changed { get; set; }

    [Inject]
    private ChangeListener Changes { get; set; } = default!;

    public void Dispose() => Changes.Changed -= Hear;

    protected override void OnAfterRender(bool firstRender)
    {
        if (firstRender)
            Changes.Changed += Hear;
    }

    private async void Hear(string changed)
    {
        if (changed != ChangeNotice.Catalog)
            return;
        try
        {
            await InvokeAsync(Changed.InvokeAsync);
        }
        catch (OperationCanceledException)
        {
            // The person typed on: the page is answering a newer question already.
        }
        catch (Exception error)
        {
            await DispatchExceptionAsync(error);
        }
    }
}
