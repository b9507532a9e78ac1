using GrindShop.Shop;
using GrindShop.Shop.Buying;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Office;

/// <summary>What to buy now and why, what is on order and late, and what all of it assumes.</summary>
public sealed partial class BuyingPage : LivePage
{
    private const string NewDraft = "/office/buying/new";

    private readonly Dictionary<string, string> _keys = [];
    private IReadOnlyList<PartNeed>? _needs;
    private BuyingRules? _rules;
    private IReadOnlyList<PurchaseOrder> _open = [];
    private IReadOnlyList<PurchaseOrder> _closed = [];
    private Refusal? _refusal;
    private bool _busy;

    [Inject]
    private BuyingBook Book { get; set; } = default!;

    [Inject]
    private Purchasing Purchasing { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [SupplyParameterFromQuery]
    private string? Show { get; set; }

    [SupplyParameterFromQuery]
    private string? Part { get; set; }

    private bool ShowsAll => Show == "all";

    private IReadOnlyList<PartNeed> Due => [.. _needs!.Where(need => need.IsDue)];

    private IReadOnlyList<PartNeed> Shown => ShowsAll ? _needs! : Due;

    private PartNeed? Chosen => _needs!.FirstOrDefault(need => need.Part.PartNumber == Part);

    protected override async Task ReadAsync()
    {
        _rules = await Book.RulesAsync();
        _needs = await Book.NeedsAsync();
        _open = await Purchasing.ListAsync(closed: false);
        _closed = Show == "closed" ? await Purchasing.ListAsync(closed: true) : [];
    }

    protected override Task OnParametersSetAsync() => _needs is not null && Show == "closed" ? ReadAsync() : Task.CompletedTask;

    /// <summary>One click, one draft: a second click while the first is under way finds the same.</summary>
    private async Task DraftAsync(IReadOnlyList<PartNeed> due)
    {
        var vendor = due[0].Part.Supplier.Code;
        if (!_keys.TryGetValue(vendor, out var key))
            _keys[vendor] = key = Guid.NewGuid().ToString("N");
        _busy = true;
        var draft = await Purchasing.DraftAsync(vendor, due.ToDictionary(need => need.Part.PartNumber, Wish), key, "Drafted from the reorder points.", await SignsAsAsync());
        (_busy, _refusal) = (false, draft.Refusal);
        if (draft.Succeeded)
            Navigation.NavigateTo($"/office/buying/{draft.Value.Number}");
    }

    private PurchaseWish Wish(PartNeed need) => new(need.Quantity, need.UnitPrice, need.Terms.SetupCharge, need.ExpectedOn(Today));

    private static string? Current(bool isCurrent) => isCurrent ? "true" : null;
}
