using CsCheck;
using GrindShop.Shop.Allocating;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Orders;

namespace GrindShop.Shop.Tests.Allocating;

/// <summary>The proposal against every other way to give out the same blanks; no database.</summary>
public sealed class BatchProposalTests
{
    private static readonly BlankPart[] Parts = [Shelf.Blanks[0].Part, Shelf.Blanks[1].Part];

    private static readonly LotMetal[] Metals = [new(.030, .2), new(.024, .2)];

    /// <summary>What is free of each part and metal, and which piece comes out of which of them with how many thousandths off; 9 and more: not at all.</summary>
    private static readonly Gen<(int[] Free, int[][] Off)> Shops = Gen.Select(Gen.Int[0, 2].Array[4], Gen.Int[1, 13].Array[4].Array[1, 5]);

    [Fact]
    public void No_other_way_serves_more_or_costs_less_and_no_lot_is_promised_twice() => Shops.Sample(shop =>
    {
        var order = SomeOrders.Accepted();
        var waiting = shop.Off.Select((off, i) => Piece(order, i + 1, shop.Free, off)).ToList();

        var proposal = BatchAllocation.Propose(waiting);

        Assert.Equal(waiting.Count, proposal.Takes.Count + proposal.Left.Count);
        Assert.All(proposal.Takes.GroupBy(Supply), supply => Assert.True(supply.Count() <= shop.Free[supply.Key]));
        Assert.All(proposal.Takes, take => Assert.Equal(shop.Off[take.For.Piece - 1][Supply(take)] / 1000.0, take.Metal.RemovalIn));
        Assert.Equal(Best(shop.Off, 0, shop.Free), (proposal.Takes.Count, -proposal.Cost - (decimal)Math.Round(proposal.RemovalIn * 1000)));
    }, iter: 300);

    private static WaitingPiece Piece(Order order, int piece, int[] free, int[] off) => new(order, order.First, piece, BlankRanking.Of(Parts.Select((part, i) => new BlankOption(
        SomeOrders.Answer.Best! with
        {
            PartNumber = part.PartNumber,
            Free = [.. Enumerable.Range(2 * i, 2).Where(supply => free[supply] > 0 && off[supply] < 9).Select(supply => new FreeMetal(Metals[supply % 2], free[supply], off[supply] / 1000.0))],
        }, part, null))));

    private static int Supply(ProposedTake take) => 2 * Array.IndexOf(Parts, take.Blank.Option.Part) + Array.IndexOf(Metals, take.Metal.Metal);

    /// <summary>Cams served, then money kept: a thousandth of an inch counts a dollar.</summary>
    private static (int Served, decimal Kept) Best(int[][] off, int from, int[] free) => from == off.Length ? (0, 0) : Enumerable.Range(0, 4)
        .Where(supply => free[supply] > 0 && off[from][supply] < 9).Select(supply =>
        {
            var rest = Best(off, from + 1, [.. free.Select((count, i) => i == supply ? count - 1 : count)]);
            return (rest.Served + 1, rest.Kept - Parts[supply / 2].Cost - off[from][supply]);
        }).Append(Best(off, from + 1, free)).Max();
}
