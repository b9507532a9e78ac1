using GrindShop.Shop.Engines;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Specs;

namespace GrindShop.Shop.Tests.Orders;

/// <summary>Whole prices worked out by hand with pencil and paper, figure by figure, from a small price list.</summary>
public class PriceListTests
{
    private static readonly EngineFamily Main = Wishes.MainFamily;

    private static readonly IReadOnlyList<PriceEntry> List =
    [
        new BasePrice { EngineFamily = Main, Lifter = LifterType.HydraulicRoller, Amount = 210 },
        new RepairPrice { EngineFamily = Main, Kind = WorkKind.Regrind, Amount = 140 },
        new PriceAdder { Code = "HEAT", Name = "Heat", When = AdderTrigger.HeatTreat, Amount = 145 },
        new PriceAdder { Code = "SPECIAL", Name = "Special", When = AdderTrigger.SpecialOrder, Amount = 60 },
        new PriceAdder { Code = "SPLITBC", Name = "Split", When = AdderTrigger.SplitBaseCircles, Amount = 0 },
        new PriceAdder { Code = "RUSH", Name = "Rush", When = AdderTrigger.Manual, Amount = 12.5m, Measure = AdderMeasure.Percent },
        new PriceAdder { Code = "POLISH", Name = "Polish", When = AdderTrigger.Manual, Amount = 30 },
        new QuantityBreak { From = 8, Amount = 8 },
        new QuantityBreak { From = 4, Amount = 5 },
    ];

    /// <summary>
    /// Blank 53.25 x 1.35 = 71.8875, to the cent 71.89. In dollars 210 + 71.89 + 145 + 60 + 30 = 516.89. Rush 12.5 % of it = 64.61125,
    /// to the cent 64.61. Six equal cams take the step of 4: 5 % of 516.89 = 25.8445, to the cent 25.84 off. 516.89 + 64.61 - 25.84 = 555.66.
    /// </summary>
    [Fact]
    public void One_of_six_equal_cams_with_everything_on_top()
    {
        var lines = Lines(6, soft: true, inStock: false, "RUSH", "POLISH");

        Assert.Equal([("base", 210m), ("blank", 71.89m), ("HEAT", 145m), ("SPECIAL", 60m), ("POLISH", 30m), ("RUSH", 64.61m), ("quantity", -25.84m)],
            lines.Select(line => (line.Code, line.Amount)));
        Assert.Equal(555.66m, lines.Sum(line => line.Amount));
    }

    [Theory]
    [InlineData(1, 0)]
    [InlineData(3, 0)]
    [InlineData(4, 14.09)] // 5 % of 281.89 = 14.0945
    [InlineData(7, 14.09)]
    [InlineData(8, 22.55)] // 8 % of 281.89 = 22.5512
    [InlineData(50, 22.55)]
    public void The_highest_step_that_is_reached_counts(int quantity, decimal off) =>
        Assert.Equal(281.89m - off, Lines(quantity, soft: false, inStock: true).Sum(line => line.Amount));

    [Fact]
    public void Every_line_says_why_and_from_which_figures_and_the_cost_is_for_the_shop_only()
    {
        var lines = Lines(6, soft: true, inStock: false, "RUSH");

        Assert.All(lines, line => Assert.StartsWith("Because ", line.Why));
        Assert.All(lines, line => Assert.Matches(@"[0-9]", line.Figures));
        Assert.Equal("Cost $53.25 x mark-up 1.35 = $71.89.", lines[1].Figures);
        Assert.All(lines, line => Assert.DoesNotContain("53.25", line.Why + line.Text));
        Assert.Contains(lines, line => line.Figures == "12.5 % of $486.89 = $60.86.");
        Assert.Contains(lines, line => line.Why == "Because 6 equal cams are ordered; from 4 on each costs 5 % less.");
    }

    /// <summary>140 + 12.5 % of 140 = 17.50; 5 % of 140 = 7.00 off.</summary>
    [Fact]
    public void A_regrind_has_its_price_and_what_the_desk_chose() =>
        Assert.Equal([140m, 17.50m, -7.00m], new PriceRules(List, 1.35m).RepairLines(WorkKind.Regrind, Main.Code, ["RUSH"], 4).Select(line => line.Amount));

    [Theory]
    [InlineData(WorkKind.GearReplacement, "RV8-R")]
    [InlineData(WorkKind.Regrind, "FV8-F")]
    [InlineData(WorkKind.Regrind, null)]
    public void Without_a_price_for_the_work_the_desk_writes_its_own_lines(WorkKind kind, string? family) =>
        Assert.Empty(new PriceRules(List, 1.35m).RepairLines(kind, family, ["RUSH"], 1));

    [Theory]
    [InlineData("base/RV8-R/solidRoller", true)]
    [InlineData("base/RV8-R/3", false)]
    [InlineData("base/XX/solidRoller", false)]
    [InlineData("repair/RV8-R/newGrind", false)]
    [InlineData("adder/CRATE", true)]
    [InlineData("adder/crate", false)]
    [InlineData("adder/../x", false)]
    [InlineData("break/2", true)]
    [InlineData("break/1", false)]
    [InlineData("break/101", false)]
    public void Places_of_the_list(string key, bool there) => Assert.Equal(there, PricePlaces.Of(key, [Main]) is not null);

    private static IReadOnlyList<PriceLine> Lines(int quantity, bool soft, bool inStock, params string[] manual)
    {
        var blank = Shelf.Blank("RV8R-516-09");
        var part = Priced(blank.Part);
        var fit = Shelf.Fit(Shelf.Nominal(blank), blank) with { NeedsHeatTreat = soft, InStock = inStock };
        return new PriceRules(List, 1.35m).Lines(Shelf.Nominal(blank) with { Lifter = LifterType.HydraulicRoller }, Main, part, fit, manual, quantity).Value!;
    }

    private static Shop.Blanks.BlankPart Priced(Shop.Blanks.BlankPart part) => new()
    {
        PartNumber = part.PartNumber,
        EngineFamily = part.EngineFamily,
        Form = part.Form,
        Alloy = part.Alloy,
        Hardening = part.Hardening,
        Gear = part.Gear,
        FiringOrder = part.FiringOrder,
        LeastBaseCircleIn = part.LeastBaseCircleIn,
        Supplier = part.Supplier,
        Cost = 53.25m,
        LeadTimeDays = part.LeadTimeDays,
    };
}
