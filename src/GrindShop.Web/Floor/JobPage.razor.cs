using GrindShop.Shop;
using GrindShop.Shop.Allocating;
using GrindShop.Shop.Routing;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Floor;

/// <summary>One job at one station: the next step as one button. A double tap, a repeated or a late press does no harm.</summary>
public sealed partial class JobPage : LivePage
{
    private Job? _job;
    private string? _read;
    private Refusal? _refusal;
    private string? _done;
    private string _note = "";
    private string? _replacement;

    [Parameter]
    public string Code { get; set; } = "";

    /// <summary>The key of the command that the button shown would send: the same until that command has succeeded.</summary>
    [PersistentState]
    public string? CommandKey { get; set; }

    [Inject]
    private JobFloor JobFloor { get; set; } = default!;

    [Inject]
    private BlankReturn BlankReturn { get; set; } = default!;

    private string Wanted => ScannedCode.Read(Code);

    /// <summary>The job of the page's address, once it has been read.</summary>
    private Job? Shown => _read == Wanted ? _job : null;

    private bool IsLate => _job is { IsOpen: true } job && job.DueOn < Today;

    protected override bool Concerns(string orderNumber) => _job?.Order.Number == orderNumber;

    protected override async Task OnParametersSetAsync()
    {
        if (_read is null || _read == Wanted)
            return;
        (_refusal, _done, _note, CommandKey) = (null, null, "", null);
        await ReadAsync();
    }

    protected override async Task ReadAsync()
    {
        var wanted = Wanted;
        CommandKey ??= NewKey();
        _job = await JobFloor.FindAsync(wanted);
        _replacement = _job is { EndedAs: JobEnd.Scrapped } ended
            ? (await JobFloor.JobsOfAsync(ended.Order.Number)).FirstOrDefault(job => job.Replaces == ended.Code)?.Code
            : null;
        _read = wanted;
    }

    private async Task CompleteAsync(Stage stage)
    {
        var outcome = await JobFloor.CompleteAsync(Wanted, stage, await SignsAsAsync(), CommandKey!, _note);
        _refusal = outcome.Refusal;
        _done = outcome.Succeeded ? $"Done: {stage.Words()}, by {outcome.Value.DoneBy}" : null;
        if (outcome.Succeeded)
            (_note, CommandKey) = ("", NewKey());
        await ReadAsync();
    }

    private async Task GiveBackAsync(string why, string key)
    {
        var outcome = await BlankReturn.GiveBackAsync(Wanted, why, await SignsAsAsync(), key);
        (_refusal, _done) = (outcome.Refusal, outcome.Succeeded ? $"{Wanted} has ended: put its blank back to {Shown?.BlankLot?.Location}. The cam waits for a blank again." : null);
    }

    private async Task ScrappedAsync(ScrapResult result)
    {
        (_refusal, _done) = (null, result.Words);
        await ReadAsync();
    }

    private static string Over(Job job) => job.EndedAs?.ToString() ?? "Shipped";

    private static string NewKey() => Guid.NewGuid().ToString("N");
}
