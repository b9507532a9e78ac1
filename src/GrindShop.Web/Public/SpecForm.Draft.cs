using GrindShop.Shop.Drafts;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Grinds;
using GrindShop.Shop.Records;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.WebUtilities;

namespace GrindShop.Web.Public;

/// <summary>This part: where the form begins, and how nothing typed is lost.</summary>
public sealed partial class SpecForm
{
    /// <summary>A pause in typing after which the shop keeps the draft; until then the device keeps it alone.</summary>
    private static readonly TimeSpan KeepPause = TimeSpan.FromSeconds(1);

    private readonly LatestOnly _keeping = new();
    private DraftKeeper _keeper = default!;
    private DeviceDraft? _device;
    private ElementReference _form;
    private DeviceTexts? _earlier;
    private ShopSettings? _settings;
    private bool _ready;

    private string? ResumeLink => Kept?.Code is { } code ? $"{Navigation.BaseUri}spec/resume/{code}" : null;

    private string? ShareLink => _judged is null ? null : $"{Navigation.BaseUri}spec?{SpecQuery.Write(_reading.Spec)}";

    private string DraftState => _keeper switch
    {
        { Trouble: { } trouble } => trouble.Reason,
        { Other: not null } => "Not kept until you have chosen.",
        { KeptAt: { } at } => $"Your draft is kept, last at {_settings!.ShopTime(at):HH:mm} by the shop's clock.",
        _ => "What you type is kept as a draft: through a lost connection, a reload, and on another device by its link.",
    };

    public async ValueTask DisposeAsync()
    {
        EndCalls();
        Navigation.LocationChanged -= Turn;
        _typing.Dispose();
        _keeping.Dispose();
        if (_device is not null)
            await _device.DisposeAsync();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
            return;
        await _begun;
        _device = await DeviceDraft.OpenAsync(Js);
        await GoOnFromAsync(await _device.WatchAsync(_form));
        _ready = true;
        StateHasChanged();
    }

    /// <summary>By a resume link, a link to a cam, one of the shop's grinds, or empty.</summary>
    private async Task<SpecFormState> FirstAsync(CatalogContent content)
    {
        var query = new Uri(Navigation.Uri).Query;
        if (Code is not null)
            return await ResumedAsync(Code);
        if (QueryHelpers.ParseQuery(query).TryGetValue("grind", out var code) && await Grinds.FindAsync(code.ToString()) is { Retired: false } grind)
            return new SpecFormState { Texts = SpecDraft.Of(grind.Entry.Spec with { Use = $"From the shop's grind {grind.Code} {grind.Entry.Name}" }).Texts, IsGiven = true };
        var read = SpecQuery.Read(query, content);
        return new SpecFormState { Texts = read.Draft.Texts, IsGiven = read.Draft.Texts.Count > 0 };
    }

    private async Task<SpecFormState> ResumedAsync(string code)
    {
        var state = new SpecFormState();
        if (await Drafts.FindAsync(code.ToUpperInvariant()) is { } draft)
            state.GoOn(draft);
        else
            state.IsGone = true;
        return state;
    }

    private async Task GoOnFromAsync(DeviceTexts device)
    {
        var isAnother = Kept!.IsGiven || (Kept.Code is { } code && code != device.Code);
        _earlier = isAnother ? await _device!.BeginAsync(Kept.Texts) : device.Earlier;
        if (!Kept.IsGiven)
            await RestoreAsync(isAnother ? new DeviceTexts(null, null) : device);
        if (Code is not null)
            Navigation.NavigateTo("/spec", replace: true);
    }

    /// <summary>The draft that this device began, with what the shop has not heard of yet.</summary>
    private async Task RestoreAsync(DeviceTexts device)
    {
        if (Kept!.Code is null && device.Code is { } code && await Drafts.FindAsync(code) is { } draft)
            Kept.GoOn(draft);
        if (device.Code is null || device.Code == Kept.Code)
            foreach (var (path, text) in device.Typed ?? [])
                _draft[path] = text;
        if (Kept.Code is not null)
            await _device!.KeptAsync(Kept.Code, Kept.Code == device.Code ? new Dictionary<string, string>() : Kept.Texts);
        await AgainAsync();
    }

    /// <summary>From a cam that came by a link back to the draft of this device, or the other way round. Neither is lost.</summary>
    private async Task GoOnAsync()
    {
        if (_earlier is not { } earlier || _device is null)
            return;
        if (!Kept!.IsGiven)
            await KeepAsync();
        _earlier = await _device.TurnBackAsync();
        StartNew();
        Navigation.NavigateTo("/spec", replace: true);
        await RestoreAsync(earlier);
    }

    /// <summary>A given cam is a draft like any other as soon as somebody works on it, and its address then no longer begins it anew.</summary>
    private void MakeOwn()
    {
        if (!Kept!.IsGiven)
            return;
        Kept.IsGiven = false;
        Navigation.NavigateTo(Here, replace: true);
    }

    private void StartNew()
    {
        _keeping.Next();
        (Kept!.Code, Kept.Revision, Kept.SubmitKey, Kept.IsGiven) = (null, 0, new SpecFormState().SubmitKey, false);
        _draft.Texts.Clear();
        _keeper = new DraftKeeper(Drafts, Clock);
    }

    private async Task KeepSoonAsync(CancellationToken cancel)
    {
        await Task.Delay(KeepPause, Clock, cancel);
        await KeepAsync();
        StateHasChanged();
    }

    private async Task KeepAsync()
    {
        if (await _keeper.KeepAsync(Kept!) is { } texts && _device is not null)
            await _device.KeptAsync(Kept!.Code!, texts);
    }

    private async Task KeepMineAsync()
    {
        if (await _keeper.KeepMineAsync(Kept!) is { } texts)
            await _device!.KeptAsync(Kept!.Code!, texts);
    }

    private async Task TakeTheirsAsync()
    {
        _keeper.TakeTheirs(Kept!);
        await _device!.ForgetAsync();
        await _device.KeptAsync(Kept!.Code!, Kept.Texts);
        await AgainAsync();
    }

    private async Task StartAfreshAsync()
    {
        await EndAsync();
        StartNew();
        await AgainAsync();
    }

    /// <summary>Nothing of the draft stays, neither with the shop nor on the device.</summary>
    private async Task EndAsync()
    {
        _keeping.Next();
        if (Kept!.Code is { } code)
            await Drafts.EndAsync(code);
        if (_device is not null)
            await _device.ForgetAsync();
    }
}
