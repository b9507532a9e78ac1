using CsCheck;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Tests.Records;
using static GrindShop.Shop.Tests.Buying.SomePurchases;

namespace GrindShop.Shop.Tests.Buying;

public class PurchaseOrderTests
{
    [Fact]
    public void From_draft_to_received_in_two_deliveries()
    {
        var purchase = Sent(6);
        Assert.Equal((PurchaseState.Sent, 6), (purchase.State, purchase.Lines[0].Missing));

        Assert.True(Receive(purchase, Delivery(4)).Succeeded);
        Assert.Equal((PurchaseState.PartlyReceived, 2), (purchase.State, purchase.Lines[0].Missing));

        Assert.True(Receive(purchase, Delivery(2, "d2")).Succeeded);
        Assert.Equal((PurchaseState.Received, 0, (DateOnly?)null), (purchase.State, purchase.Lines[0].Missing, purchase.NextExpectedOn));
        Assert.Equal(
            [PurchaseEventKind.Drafted, PurchaseEventKind.Changed, PurchaseEventKind.Sent, PurchaseEventKind.Received, PurchaseEventKind.Received],
            purchase.History.Select(line => line.Kind));
        Assert.Equal(purchase.History.Count, purchase.Changes);
    }

    [Fact]
    public void More_than_ordered_needs_a_reason()
    {
        var purchase = Sent(6);
        Assert.Equal("tooMany", Receive(purchase, Delivery(7)).Refusal!.Code);
        Assert.Equal(PurchaseState.Sent, purchase.State);

        Assert.True(Receive(purchase, Delivery(7, "d2", "supplier sent one for free")).Succeeded);
        Assert.Equal((PurchaseState.Received, 7, "supplier sent one for free"), (purchase.State, purchase.Lines[0].Received, purchase.Lines[0].MoreWhy));
        Assert.Contains("1 more than ordered", purchase.History[^1].What);
    }

    [Fact]
    public void Late_is_what_is_missing_after_its_day()
    {
        var purchase = Sent(6);
        Assert.Equal(0, purchase.DaysLate(Today.AddDays(35)));
        Assert.Equal(4, purchase.DaysLate(Today.AddDays(39)));

        Assert.True(purchase.Expect(Part.PartNumber, Today.AddDays(50), "furnace down", Today.AddDays(39), "Owner", TestShop.Now).Succeeded);
        Assert.Equal(0, purchase.DaysLate(Today.AddDays(39)));
        Assert.Equal((Today.AddDays(35), Today.AddDays(50)), (purchase.Lines[0].FirstExpectedOn, purchase.Lines[0].ExpectedOn));
        Assert.Contains("furnace down", purchase.History[^1].What);

        Receive(purchase, Delivery(6));
        Assert.Equal(0, purchase.DaysLate(Today.AddDays(90)));
    }

    [Fact]
    public void The_suppliers_least_quantity_and_multiple_need_a_reason_to_go_round()
    {
        var part = SoldFrom(10);
        var terms = new SupplyTerms(part);
        Assert.True(terms.SoldAs(5, 0, [new(10, 160m), new(25, 140m)]).Succeeded);
        var purchase = PurchaseOrder.Draft("PO-1", Part.Supplier, "key", "Owner", TestShop.Now, "Drafted.");

        Assert.Equal("tooFew", purchase.Want(part, terms, Wish(6), Today, "Owner", TestShop.Now).Refusal!.Code);
        Assert.Equal("notMultiple", purchase.Want(part, terms, Wish(12), Today, "Owner", TestShop.Now).Refusal!.Code);
        Assert.Empty(purchase.Lines);
        Assert.True(purchase.Want(part, terms, Wish(12) with { UnusualWhy = "agreed on the phone" }, Today, "Owner", TestShop.Now).Succeeded);
        Assert.Contains("agreed on the phone", purchase.History[^1].What);
        Assert.True(purchase.Want(part, terms, Wish(15), Today, "Owner", TestShop.Now).Succeeded);
        Assert.Equal((15, null), (Assert.Single(purchase.Lines).Quantity, purchase.Lines[0].UnusualWhy));
    }

    [Fact]
    public void Prices_fall_at_the_breaks()
    {
        var terms = new SupplyTerms(Part);
        terms.SoldAs(1, 0, [new(25, 140m), new(10, 160m)]);
        Assert.Equal([Part.Cost, 160m, 160m, 140m, 140m], new[] { 9, 10, 24, 25, 99 }.Select(terms.UnitPrice));
        Assert.Equal("twoPrices", terms.SoldAs(1, 0, [new(5, 1), new(5, 2)]).Refusal!.Code);
    }

    [Fact]
    public void Closing_cancels_what_never_came_and_gives_up_the_rest_of_what_did()
    {
        var cancelled = Sent();
        Assert.Equal("noReason", cancelled.Close(" ", "Owner", TestShop.Now).Refusal!.Code);
        Assert.True(cancelled.Close("price went up", "Owner", TestShop.Now).Succeeded);
        Assert.Equal(PurchaseState.Cancelled, cancelled.State);
        Assert.Equal("wrongState", Receive(cancelled, Delivery(1)).Refusal!.Code);

        var partly = Sent();
        Receive(partly, Delivery(2));
        Assert.True(partly.Close("supplier gave up the part", "Owner", TestShop.Now).Succeeded);
        Assert.Equal((PurchaseState.Received, PurchaseEventKind.ClosedShort), (partly.State, partly.History[^1].Kind));
    }

    [Fact]
    public void What_cannot_be_is_refused()
    {
        var draft = PurchaseOrder.Draft("PO-1", Part.Supplier, "key", "Owner", TestShop.Now, "Drafted.");
        Assert.Equal("empty", draft.Send(Today, "Owner", TestShop.Now).Refusal!.Code);
        Assert.Equal("badQuantity", draft.Want(Part, null, Wish(0), Today, "Owner", TestShop.Now).Refusal!.Code);
        Assert.Equal("badPrice", draft.Want(Part, null, Wish(1) with { UnitCost = -1 }, Today, "Owner", TestShop.Now).Refusal!.Code);
        Assert.Equal("badDate", draft.Want(Part, null, Wish(1) with { ExpectedOn = Today.AddDays(-1) }, Today, "Owner", TestShop.Now).Refusal!.Code);
        Assert.Equal("notOnOrder", draft.Drop("RV8R-516-08", "Owner", TestShop.Now).Refusal!.Code);
        Assert.Equal("badDate", Draft().Send(Today.AddDays(60), "Owner", TestShop.Now).Refusal!.Code);

        var sent = Sent();
        Assert.Equal("wrongState", sent.Want(Part, null, Wish(3), Today, "Owner", TestShop.Now).Refusal!.Code);
        Assert.Equal("wrongState", sent.Send(Today, "Owner", TestShop.Now).Refusal!.Code);
        Assert.Equal("notOnOrder", Receive(sent, Delivery(1) with { PartNumber = Other.PartNumber }).Refusal!.Code);
        Assert.Equal("badDate", sent.Expect(Part.PartNumber, Today.AddYears(9), "", Today, "Owner", TestShop.Now).Refusal!.Code);
    }

    [Fact]
    public void Whatever_comes_in_the_sums_agree() => Gen.Select(Gen.Int[1, 9], Gen.Int[1, 6].Array[0, 8]).Sample((ordered, deliveries) =>
    {
        var purchase = Sent(ordered);
        foreach (var (i, quantity) in deliveries.Index())
        {
            var (missing, open) = (purchase.Lines[0].Missing, purchase.IsOpen);
            Assert.Equal(open && quantity <= missing, Receive(purchase, Delivery(quantity, $"d{i}")).Succeeded);
        }
        var line = purchase.Lines[0];
        Assert.Equal(line.Received, line.Receipts.Sum(receipt => receipt.Quantity));
        Assert.Equal(ordered, line.Received + line.Missing);
        Assert.Equal(line.Missing == 0, purchase.State == PurchaseState.Received);
    });
}
