using System.Globalization;
using GrindShop.Shop;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Planning;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Office;

/// <summary>Chooses a family and a time, works out the best shelf in the background and shows it beside today's.</summary>
public sealed partial class ShelfPage : LivePage
{
    public static readonly int[] Periods = [1, 3, 6, 12, 24, 60];

    private readonly ShelfForm _form = new();
    private IReadOnlyList<EngineFamily> _families = [];
    private IReadOnlyList<PreparedBlank> _blanks = [];
    private IReadOnlyList<string> _today = [], _usedUp = [];
    private ShopRules _rules = default!;
    private ShelfHistory? _history;
    private ShelfCase? _work;
    private ShelfPlan? _plan;
    private Refusal? _refusal;
    private (string?, string?)? _read;
    private string _family = "";
    private int _months = 12;

    [Inject]
    private ShelfBook Book { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [SupplyParameterFromQuery]
    private string? Family { get; set; }

    [SupplyParameterFromQuery]
    private string? Months { get; set; }

    protected override async Task ReadAsync()
    {
        var content = await Catalog.ContentAsync();
        (_families, _rules) = (content.Families, content.Rules);
        _read = (Family, Months);
        _months = OneOf(Periods, Months, 12);
        if ((content.Family(Family) ?? _families.FirstOrDefault()) is not { } family)
            return;
        _family = family.Code;
        (_blanks, _today, _usedUp) = await Book.BlanksAsync(family);
        _history = await Book.HistoryAsync(family, Now.AddMonths(-_months));
        _form.Take(_history);
    }

    protected override Task OnParametersSetAsync()
    {
        if (_read is null || _read == (Family, Months))
            return Task.CompletedTask;
        (_plan, _work, _refusal) = (null, null, null);
        return ReadAsync();
    }

    /// <summary>What an address asks for where it is offered, else the usual.</summary>
    public static int OneOf(int[] offered, string? asked, int usual) => int.TryParse(asked, NumberStyles.None, CultureInfo.InvariantCulture, out var value) && offered.Contains(value) ? value : usual;

    private void Start()
    {
        var assumed = _form.Read();
        (_refusal, _plan) = (assumed.Refusal, null);
        if (assumed.Succeeded)
            _work = new ShelfCase(_history!.Demands, _blanks, _today, assumed.Value.Weights, assumed.Value.Growth) { UsedUp = _usedUp };
    }

    private void Show(ShelfPlan plan) => (_plan, _work) = (plan, null);

    private void End() => _work = null;

    private void Go(string? family, int months) => Navigation.NavigateTo($"/office/shelf?family={family}&months={months}");
}
