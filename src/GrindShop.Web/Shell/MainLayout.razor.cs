using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.JSInterop;

namespace GrindShop.Web.Shell;

public sealed partial class MainLayout
{
    private ErrorBoundary? _boundary;

    public void Dispose() => Navigation.LocationChanged -= Recover;

    protected override void OnInitialized() => Navigation.LocationChanged += Recover;

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
            return;
        Choice.IsDark = await Js.InvokeAsync<bool>("shop.isDark");
        StateHasChanged();
    }

    private async Task SwitchAsync()
    {
        Choice.IsDark = !Choice.IsDark;
        await Js.InvokeVoidAsync("shop.setDark", Choice.IsDark);
    }

    private void Recover(object? sender, LocationChangedEventArgs location) => _boundary?.Recover();
}
