using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Records;
using GrindShop.Web.Security;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;

namespace GrindShop.Web.Shell;

/// <summary>A page for the people of the shop: shows the shop's time and follows what others change, on this web node or another.</summary>
public abstract class LivePage : CalledComponent, IDisposable
{
    private bool _reading;
    private bool _heardMore;
    private ITimer? _timer;

    [Inject]
    protected Catalog Catalog { get; set; } = default!;

    [Inject]
    protected TimeProvider Clock { get; set; } = default!;

    [Inject]
    private ChangeListener Changes { get; set; } = default!;

    [CascadingParameter]
    private Task<AuthenticationState> Authentication { get; set; } = default!;

    /// <summary>Set before the page reads, each time.</summary>
    protected ShopSettings Shop { get; private set; } = default!;

    protected DateTimeOffset Now => Clock.GetUtcNow();

    protected DateOnly Today => Shop.Today(Now);

    public void Dispose()
    {
        EndCalls();
        Changes.Changed -= Hear;
        _timer?.Dispose();
        GC.SuppressFinalize(this);
    }

    protected override Task OnInitializedAsync() => ReadAgainAsync();

    protected override void OnAfterRender(bool firstRender)
    {
        if (!firstRender)
            return;
        Changes.Changed += Hear;
        if (ReadsEvery is { } every)
            _timer = Clock.CreateTimer(_ => Hear(ChangeNotice.Catalog), null, every, every);
    }

    protected async Task<string> SignsAsAsync() => (await Authentication).User.SignsAs();

    /// <summary>Reads what the page shows.</summary>
    protected abstract Task ReadAsync();

    /// <summary>How often the page is read again although nothing was changed, because what it shows depends on the clock.</summary>
    protected virtual TimeSpan? ReadsEvery => null;

    /// <summary>Does a change of this order concern the page?</summary>
    protected virtual bool Concerns(string orderNumber) => true;

    private void Hear(string changed) => Do(() => changed == ChangeNotice.Catalog || Concerns(changed) ? ReadAgainAsync() : Task.CompletedTask);

    /// <summary>One reading at a time, and one more if something changed while it ran: the page never ends on an older answer.</summary>
    private async Task ReadAgainAsync()
    {
        _heardMore = true;
        if (_reading)
            return;
        _reading = true;
        try
        {
            while (_heardMore)
            {
                _heardMore = false;
                Shop = (await Catalog.ContentAsync()).Rules.Settings;
                await ReadAsync();
                StateHasChanged();
            }
        }
        finally
        {
            _reading = false;
        }
    }
}
