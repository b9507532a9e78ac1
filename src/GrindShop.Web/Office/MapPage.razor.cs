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
    private (string, int, int, string) _read;

    [Inject]
    private ShelfBook Book { get; set; } = default!;

    [Inject]
    private BlankMap Map { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [SupplyParameterFromQuery]
    private string Family { get; set; } = "";

    [SupplyParameterFromQuery]
    private int Months { get; set; }

    /// <summary>Thousandths of an inch.</summary>
    [SupplyParameterFromQuery(Name = "base")]
    private int GivenUp { get; set; }

    [SupplyParameterFromQuery]
    private string Lifter { get; set; } = "";

    protected override async Task ReadAsync()
    {
        var content = await Catalog.ContentAsync();
        _families = content.Families;
        if ((content.Family(Family) ?? _families.FirstOrDefault()) is not { } family)
            return;
        (Family, Lifter) = (family.Code, Lifter == "flat" ? "flat" : "roller");
        (Months, GivenUp) = (ShelfPage.Periods.Contains(Months) ? Months : 12, Choices.Contains(GivenUp) ? GivenUp : 20);
        _read = (Family, Months, GivenUp, Lifter);
        var regions = await Map.RegionsAsync(family, GivenUp / 1000.0);
        var history = await Book.HistoryAsync(family, Now.AddMonths(-Months));
        var available = await Catalog.AvailableAsync();
        _picture = await Task.Run(() => Draw(family, content, regions, history, available));
    }

    protected override Task OnParametersSetAsync()
    {
        if (_families.Count == 0 || (Family, Months, GivenUp, Lifter) == _read)
            return Task.CompletedTask;
        _picture = null;
        return ReadAsync();
    }

    private MapPicture Draw(EngineFamily family, CatalogContent content, IReadOnlyList<BlankRegion> regions, ShelfHistory history, IReadOnlyDictionary<int, int> available)
    {
        var kind = Lifter == "flat" ? FollowerKind.Flat : FollowerKind.Roller;
        var stocked = content.Blanks.Where(blank => blank.Part.EngineFamily.Code == family.Code).Select(blank => new StockedBlank(blank, available.GetValueOrDefault(blank.Part.Id))).ToList();
        var shown = regions.Where(region => region.Nominal.FollowerKind == kind)
            .Select((region, i) => new MapBlank(Letter(i), region, available.GetValueOrDefault(region.Blank.Part.Id)));
        var dots = history.Demands.Where(demand => demand.Grind.Lifter.IsRoller() == (kind == FollowerKind.Roller)).Select(demand => Dot(demand, FeasibilityJudge.Judge(demand.Grind, family, stocked, content.Rules)));
        return new MapPicture([.. shown], [.. dots]);
    }

    private static MapDot Dot(ShelfDemand demand, FeasibilityAnswer answer) => new(demand, answer.Verdict switch
    {
        Verdict.FromStock => MapService.FromStock,
        Verdict.SpecialOrder => MapService.ToOrder,
        _ => MapService.None,
    }, answer.Best?.PartNumber);

    private static string Letter(int i) => i < 26 ? ((char)('A' + i)).ToString() : Letter(i / 26 - 1) + Letter(i % 26);

    private void Go(string family, int months, int givenUp, string lifter) => Navigation.NavigateTo($"/office/map?family={family}&months={months}&base={givenUp}&lifter={lifter}");
}
