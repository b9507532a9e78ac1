using GrindShop.Shop;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Orders;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace GrindShop.Web.Desk;

/// <summary>
/// A form of the desk by keyboard alone. What is typed is understood at once, kept by the browser tab until it is taken in, and the shop looks who it may be.
/// </summary>
public abstract class KeyedPage<TDraft> : LivePage, IAsyncDisposable
    where TDraft : class, new()
{
    /// <summary>A pause in typing after which the shop answers and looks who it is.</summary>
    protected static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(200);

    private readonly LatestOnly _looking = new();
    private TabKeeper<TDraft>? _keeper;

    protected TDraft Draft { get; set; } = new();

    /// <summary>What is understood of it.</summary>
    protected CallHeard Heard { get; set; } = CallHeard.Of(new CallDraft(), []);

    protected IReadOnlyList<EngineFamily> Families { get; set; } = [];

    protected IReadOnlyList<KnownCaller> Known { get; private set; } = [];

    protected Refusal? Refusal { get; set; }

    protected bool Taking { get; set; }

    [Inject]
    protected CallerBook Callers { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [Inject]
    private IJSRuntime Js { get; set; } = default!;

    /// <summary>Under this name the tab keeps the draft.</summary>
    protected abstract string Keeps { get; }

    /// <summary>Who it may be, by what is typed of them.</summary>
    protected abstract Contact Who { get; }

    /// <summary>The field that the person begins with.</summary>
    protected abstract ElementReference First { get; }

    public virtual async ValueTask DisposeAsync()
    {
        _looking.Dispose();
        Dispose();
        if (_keeper is not null)
            await _keeper.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    /// <summary>What was typed before a reload comes back.</summary>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
            return;
        (_keeper, var kept) = await TabKeeper<TDraft>.StartAsync(Js, Keeps);
        await First.FocusAsync();
        if (kept is null)
            return;
        Draft = kept;
        Hear();
        StateHasChanged();
        await GoOnAsync();
    }

    /// <summary>Understands the draft as it stands.</summary>
    protected abstract void Hear();

    /// <summary>What is answered about a draft that came back.</summary>
    protected virtual Task GoOnAsync() => LookAsync();

    protected async Task LookAsync()
    {
        var cancel = _looking.Next();
        await Task.Delay(Pause, Clock, cancel);
        var callers = await Callers.FindAsync(Who, cancel);
        await AlsoLookAsync(cancel);
        cancel.ThrowIfCancellationRequested();
        Known = callers;
        StateHasChanged();
    }

    protected virtual Task AlsoLookAsync(CancellationToken cancel) => Task.CompletedTask;

    protected async Task KeepAsync()
    {
        if (_keeper is not null)
            await _keeper.KeepAsync(Draft);
    }

    /// <summary>It is taken in: the tab need not keep it any longer.</summary>
    protected async Task LeaveForAsync(string address)
    {
        if (_keeper is not null)
            await _keeper.DropAsync();
        Navigation.NavigateTo(address);
    }
}
