using Microsoft.JSInterop;

namespace GrindShop.Web.Desk;

/// <summary>What is being typed into a form of the desk, kept by the browser tab until it is taken in; with it come the form's keys.</summary>
internal sealed class TabKeeper<T> : IAsyncDisposable
    where T : class
{
    private readonly IJSObjectReference _module;
    private readonly string _name;

    private TabKeeper(IJSObjectReference module, string name) => (_module, _name) = (module, name);

    /// <summary>The keeper, and what it had kept.</summary>
    public static async Task<(TabKeeper<T> Keeper, T? Kept)> StartAsync(IJSRuntime js, string name)
    {
        var keeper = new TabKeeper<T>(await js.InvokeAsync<IJSObjectReference>("import", "./Desk/CallPage.razor.js"), name);
        return (keeper, await keeper._module.InvokeAsync<T?>("start", name));
    }

    public ValueTask KeepAsync(T draft) => _module.InvokeVoidAsync("keep", _name, draft);

    public ValueTask DropAsync() => _module.InvokeVoidAsync("drop", _name);

    public async ValueTask DisposeAsync()
    {
        try
        {
            await _module.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The browser has gone, and its module with it.
        }
    }
}
