using CsCheck;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Records;

namespace GrindShop.Shop.Tests.Blanks;

public class BlankLotTests
{
    private static readonly BlankPart Part = Shelf.Blank("RV8R-516-08").Part;

    [Fact]
    public void Whatever_is_asked_stock_stays_possible_and_the_book_adds_up() => Gen.Select(Gen.Int[1, 5], Gen.Bool.Array[0, 30]).Sample((quantity, acts) =>
    {
        var lot = BlankLot.Receive(Part, "LOT", "A1", quantity, "Owner", TestShop.Now);
        foreach (var allocate in acts)
        {
            var (free, allocated, lines) = (lot.Available, lot.Allocated, lot.Movements.Count);
            var outcome = allocate ? lot.Allocate("J1", "Desk", TestShop.Now) : lot.Consume("J1", "Floor", TestShop.Now);
            Assert.Equal(allocate ? free > 0 : allocated > 0, outcome.Succeeded);
            Assert.Equal(lines + (outcome.Succeeded ? 1 : 0), lot.Movements.Count);
            Assert.InRange(lot.Allocated, 0, lot.OnHand);
            Assert.Equal((lot.OnHand, lot.Allocated), (lot.Movements.Sum(line => line.OnHandChange), lot.Movements.Sum(line => line.AllocatedChange)));
        }
    });

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    public void Empty_lot_is_not_received(int quantity) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BlankLot.Receive(Part, "LOT", "A1", quantity, "Owner", TestShop.Now));
}
