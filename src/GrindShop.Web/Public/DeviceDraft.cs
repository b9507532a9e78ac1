using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace GrindShop.Web.Public;

/// <summary>What a device has kept by itself: the code of its draft, texts that the shop has not heard of, and the draft that was put aside for this one.</summary>
public sealed record DeviceTexts(string? Code, Dictionary<string, string>? Typed, DeviceTexts? Earlier = null);

/// <summary>The device's side of a draft. A connection that is gone is no fault here: the device keeps on by itself.</summary>
public sealed class DeviceDraft(IJSObjectReference page) : IAsyncDisposable
{
    public static async Task<DeviceDraft> OpenAsync(IJSRuntime js) =>
        new(await js.InvokeAsync<IJSObjectReference>("import", "./Public/SpecForm.razor.js"));

    /// <summary>Begins to keep what is typed in this form, and tells what was kept before.</summary>
    public async Task<DeviceTexts> WatchAsync(ElementReference form) =>
        await page.InvokeAsync<DeviceTexts?>("watch", form) ?? new DeviceTexts(null, null);

    public Task KeptAsync(string code, IReadOnlyDictionary<string, string> texts) => TellAsync("kept", code, texts);

    /// <summary>Begins a draft with what came by a link; what was there before is put aside, and told.</summary>
    public async Task<DeviceTexts?> BeginAsync(IReadOnlyDictionary<string, string> given) => await page.InvokeAsync<DeviceTexts?>("begin", given);

    /// <summary>Changes the draft for the one that was put aside, and tells what is put aside now.</summary>
    public async Task<DeviceTexts?> TurnBackAsync() => await page.InvokeAsync<DeviceTexts?>("turnBack");

    /// <summary>The form was filled by the shop: nothing typed before is newer than that.</summary>
    public Task OverruleAsync() => TellAsync("overrule");

    public Task ForgetAsync() => TellAsync("forget");

    public async ValueTask DisposeAsync()
    {
        await TellAsync("unwatch");
        await QuietlyAsync(page.DisposeAsync());
    }

    private Task TellAsync(string what, params object?[] arguments) => QuietlyAsync(page.InvokeVoidAsync(what, arguments));

    private static async Task QuietlyAsync(ValueTask call)
    {
        try
        {
            await call;
        }
        catch (Exception error) when (error is JSDisconnectedException or OperationCanceledException)
        {
            // Nobody is there any more.
        }
    }
}
