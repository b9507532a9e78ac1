using CsCheck;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Tests.Records;

namespace GrindShop.Shop.Tests.Blanks;

/// <summary>One act on a lot, and how it stands in a plain model: a list of jobs that hold a blank, a count, and a flag.</summary>
internal sealed record LotAct(StockMovementKind Kind, int Amount)
{
    private const string By = "Somebody", Reason = "because";

    private static readonly StockMovementKind[] Kinds =
        [.. Enum.GetValues<StockMovementKind>().Except([StockMovementKind.Receipt, StockMovementKind.Correct]), StockMovementKind.Allocate];

    public static readonly Gen<LotAct> Any = Gen.Select(Gen.Int[0, Kinds.Length - 1], Gen.Int[1, 4], (kind, amount) => new LotAct(Kinds[kind], amount));

    private string Job => $"J{Amount}";

    private int Change => Amount % 2 == 0 ? Amount : -Amount;

    public Outcome<StockMovement> Do(BlankLot lot) => Kind switch
    {
        StockMovementKind.Allocate => lot.Allocate(Job, By, TestShop.Now),
        StockMovementKind.Release => lot.Release(Job, By, TestShop.Now, Reason),
        StockMovementKind.Consume => lot.Consume(lot.HeldBy.FirstOrDefault() ?? "J0", By, TestShop.Now),
        StockMovementKind.Scrap => lot.Scrap(Amount, Reason, By, TestShop.Now),
        StockMovementKind.Count => lot.Count(Amount, Reason, By, TestShop.Now),
        StockMovementKind.Adjust => lot.Adjust(Change, Reason, By, TestShop.Now),
        StockMovementKind.Quarantine => lot.Quarantine(Reason, By, TestShop.Now),
        StockMovementKind.Clear => lot.Clear(Reason, By, TestShop.Now),
        _ => lot.Relocate("B2", By, TestShop.Now),
    };

    /// <summary>Does it in the model; answers whether it may be done.</summary>
    public bool Do(LotModel model) => Kind switch
    {
        StockMovementKind.Allocate => !model.Held && model.OnHand > model.Jobs.Count && model.Take(Job),
        StockMovementKind.Release => model.Jobs.Remove(Job),
        StockMovementKind.Consume => !model.Held && model.Jobs.Count > 0 && model.Use(model.Jobs.Order().First()),
        StockMovementKind.Scrap => model.Becomes(model.OnHand - Amount),
        StockMovementKind.Count => model.Becomes(Amount),
        StockMovementKind.Adjust => model.Becomes(model.OnHand + Change),
        StockMovementKind.Quarantine => !model.Held && (model.Held = true),
        StockMovementKind.Clear => model.Held && !(model.Held = false),
        _ => true,
    };
}

/// <summary>A shelf as somebody would keep it on a slip of paper.</summary>
internal sealed class LotModel(int onHand)
{
    public int OnHand { get; private set; } = onHand;

    public List<string> Jobs { get; } = [];

    public bool Held { get; set; }

    public int Available => Held ? 0 : OnHand - Jobs.Count;

    public bool Take(string job)
    {
        Jobs.Add(job);
        return true;
    }

    public bool Use(string job)
    {
        OnHand--;
        return Jobs.Remove(job);
    }

    public bool Becomes(int onHand)
    {
        var possible = onHand >= Jobs.Count;
        OnHand = possible ? onHand : OnHand;
        return possible;
    }
}
