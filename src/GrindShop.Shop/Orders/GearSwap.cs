using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>A new gear for a three-piece cam of the customer's: which cam it is, what sits on it, and what is to be pressed on.</summary>
public sealed record GearSwap
{
    public const int LongestMarks = 100;

    /// <summary>
    /// Gears that are made apart and pressed on their shaft; the others are cut in one piece with it. Common practice, no source.
    /// </summary>
    public static readonly IReadOnlyList<CamGear> Pressable = [CamGear.PressedIron, CamGear.AustemperedDuctileIron];

    /// <summary>What is stamped or cast on the cam, so that it is known again.</summary>
    public required string Marks { get; init; }

    public required CamGear Old { get; init; }

    public required CamGear New { get; init; }

    /// <summary>What the owner's rules say to the new gear with the customer's distributor gear.</summary>
    public GearAdvice Advice(EngineFamily family, DistributorGear? distributor, ShopRules rules) => rules.Gear(family, New, distributor);

    /// <summary>What stands against it whatever the engine.</summary>
    public IEnumerable<FieldProblem> Problems()
    {
        if (string.IsNullOrWhiteSpace(Marks))
            yield return new FieldProblem("gear.marks", "Write down how the cam is known again: the numbers stamped or cast on it, or “no marks”.");
        if (SpecCheck.Text(Marks, LongestMarks, "gear.marks", "The marks") is { } tooLong)
            yield return tooLong;
        if (!Pressable.Contains(Old))
            yield return new FieldProblem("gear.old", $"Only a gear that was pressed on can be replaced; {Old.Words()} is cut in one piece with its cam.");
        if (!Pressable.Contains(New))
            yield return new FieldProblem("gear.new", $"Choose a gear that can be pressed on; {New.Words()} is cut in one piece with its cam.");
    }

    /// <summary>The new gear must not run with the customer's distributor gear, or null.</summary>
    public FieldProblem? Forbidden(EngineFamily family, DistributorGear? distributor, ShopRules rules) =>
        Advice(family, distributor, rules) is { Verdict: GearVerdict.No } no ? new FieldProblem("gear.new", $"Not this gear with this distributor gear: {no.Reason}") : null;

    /// <summary>Both gears in words.</summary>
    public string Words => Old == New ? $"{New.Words()} for the worn one of its kind" : $"{New.Words()} instead of {Old.Words()}";
}
