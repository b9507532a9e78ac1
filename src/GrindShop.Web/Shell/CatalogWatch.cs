using GrindShop.Shop.Records;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Shell;

/// <summary>Stands unseen on a page that answers from the catalog and calls it when engines, blanks, rules or settings have changed.</summary>
public sealed class CatalogWatch : CalledComponent, IDisposable
{
    /// <summary>Reads and judges anew; runs on the page's own thread.</summary>
    [Parameter, EditorRequired]
    public EventCallback Changed { get; set; }

    [Inject]
    private ChangeListener Changes { get; set; } = default!;

    public void Dispose()
    {
        EndCalls();
        Changes.Changed -= Hear;
    }

    protected override void OnAfterRender(bool firstRender)
    {
        if (firstRender)
            Changes.Changed += Hear;
    }

    private void Hear(string changed)
    {
        if (changed == ChangeNotice.Catalog)
            Do(Changed.InvokeAsync);
    }
}
