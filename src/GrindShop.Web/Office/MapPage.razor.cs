using System.Globalization;
using GrindShop.Lobes;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Planning;
using GrindShop.Shop.Specs;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Office;

/// <summary>A family's blanks and recent wishes on one map.</summary>
public sealed partial class MapPage : LivePage
{
    public static readonly int[] Choices = [10, 20, 40, 60, 100];

    private IReadOnlyList<EngineFamily> _families = [];
    private MapPicture? _picture;
    private (string?, string?, string?, string?)? _read;
    private (string Family, int Months, int GivenUp, string Lifter) _shown = ("", 12, 10, "roller");

    [Inject]
    private ShelfBook Book { get; set; } = default!;

    [Inject]
    private BlankMap Map { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [SupplyParameterFromQuery]
    private string? Family { get; set; }

    [SupplyParameterFromQuery]
    private string? Months { get; set; }

    /// <summary>Thousandths of an inch.</summary>
    [SupplyParameterFromQuery]
    private string? Base { get; set; }

    [SupplyParameterFromQuery]
    private string? Lifter { get; set; }

    protected override async Task ReadAsync()
    {
        var content = await Catalog.ContentAsync();
        _families = content.Families;
        _read = (Family, Months, Base, Lifter);
        if ((content.Family(Family) ?? _families.FirstOrDefault()) is not { } family)
            return;
        _shown = (family.Code, ShelfPage.OneOf(ShelfPage.Periods, Months, 12), ShelfPage.OneOf(Choices, Base, 10), Lifter == "flat" ? "flat" : "roller");
        if (!RendererInfo.IsInteractive)
            return;
        var regions = await Map.RegionsAsync(family, Kind, _shown.GivenUp / 1000.0);
        var history = await Book.HistoryAsync(family, Now.AddMonths(-_shown.Months));
        var stocked = await Catalog.StockedAsync(family);
        _picture = await Task.Run(() => Draw(family, content.Rules, regions, history, stocked));
    }

    protected override Task OnParametersSetAsync()
    {
        if (_read is null || _read == (Family, Months, Base, Lifter))
            return Task.CompletedTask;
        _picture = null;
        return ReadAsync();
    }

    private FollowerKind Kind => _shown.Lifter == "flat" ? FollowerKind.Flat : FollowerKind.Roller;

    private MapPicture Draw(EngineFamily family, ShopRules rules, IReadOnlyList<BlankRegion> regions, ShelfHistory history, IReadOnlyList<StockedBlank> stocked)
    {
        var available = stocked.GroupBy(blank => blank.Blank.Part.PartNumber).ToDictionary(part => part.Key, part => part.Sum(blank => blank.Available));
        var shown = regions.Where(region => available.ContainsKey(region.Blank.Part.PartNumber)).Select((region, i) => new MapBlank(Letter(i), region, available[region.Blank.Part.PartNumber]));
        var dots = history.Demands.Where(demand => demand.Grind.Lifter.IsRoller() == (Kind == FollowerKind.Roller)).Select(demand => Dot(demand, FeasibilityJudge.Judge(demand.Grind, family, stocked, rules)));
        return new MapPicture([.. shown], [.. dots]);
    }

    private static MapDot Dot(ShelfDemand demand, FeasibilityAnswer answer) => new(demand, answer.Verdict switch
    {
        Verdict.FromStock => MapService.FromStock,
        Verdict.SpecialOrder => MapService.ToOrder,
        _ => MapService.None,
    }, answer.Best?.PartNumber);

    private static string Thousandths(int thousandths) => (thousandths / 1000.0).ToString(".000", CultureInfo.InvariantCulture);

    private static string Letter(int i) => i < 26 ? ((char)('A' + i)).ToString() : Letter(i / 26 - 1) + Letter(i % 26);

    private void Go(string family, int months, int givenUp, string lifter) => Navigation.NavigateTo($"/office/map?family={family}&months={months}&base={givenUp}&lifter={lifter}");
}
