using GrindShop.Shop.Blanks;
using GrindShop.Shop.Buying;

namespace GrindShop.Papers.Tests;

public class PurchaseOrderPaperTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    [Fact]
    public void Says_what_is_wanted_of_whom_at_what_price_by_when()
    {
        var paper = new PaperText(Print(2, 850m));
        foreach (var text in new[] { "PO-1007", "Turnstile Cam Blanks", "Millrace Cam Grinding", "Part deliveries are welcome", "Confirmed by the supplier", "Sent" })
            Assert.Contains(text, paper.All);
        Assert.Contains("1 PART-001 Mon 4 Jan 2027 11 121.25 1,333.75", paper.Lines);
        Assert.Contains("2 PART-002 Tue 5 Jan 2027 12 122.50 1,470.00", paper.Lines);
        Assert.Contains("RV8-R, 8620 steel, lobe-milled, soft, hardened after rough grinding, a one-piece steel gear", paper.Lines);
        Assert.Contains("Set-up charge, once 850.00", paper.Lines);
        Assert.Contains("Sum 3,653.75", paper.Lines);
        Assert.Single(paper.Pages);
        Assert.Equal("Purchase order PO-1007", paper.Title);
    }

    /// <summary>The second of the parts is bought from this vendor although another one is usual.</summary>
    [Fact]
    public void The_vendor_reads_its_own_part_numbers_whole()
    {
        var longest = string.Join('-', Enumerable.Repeat("TS-8866", 8))[..60];
        var paper = new PaperText(Print(3, 850m, i => i switch { 1 => longest, 2 => "TS-4410", _ => "" }));
        Assert.Contains($"Your number {longest}", paper.Lines);
        Assert.Contains("Your number TS-4410", paper.Lines);
        Assert.Equal(2, paper.Lines.Count(line => line.StartsWith("Your number", StringComparison.Ordinal)));
        Assert.DoesNotContain("usual one's", paper.All);
        Assert.Empty(paper.Overlaps());
    }

    [Fact]
    public void A_draft_says_that_it_is_none_yet()
    {
        var draft = new PaperText(PurchaseOrderPaper.Print(new(Purchase(1, 0), Scene.Shop, Scene.Now)));
        Assert.Contains("not sent yet", draft.All);
        Assert.Contains("Draft, not sent", draft.All);
    }

    [Fact]
    public void Sixty_lines_go_on_on_further_pages_with_their_heads_and_nothing_printed_over_anything()
    {
        var paper = new PaperText(Print(60, 0));
        Assert.InRange(paper.Pages.Count, 3, 4);
        for (var i = 1; i <= 60; i++)
            Assert.Contains(paper.Lines, line => line.StartsWith($"{i} PART-{i:000} ", StringComparison.Ordinal));
        Assert.All(paper.Pages.Index(), page => Assert.Contains($"page {page.Index + 1} of {paper.Pages.Count}", paper.All));
        Assert.Equal(paper.Pages.Count, paper.Lines.Count(line => line == "Line Blank Wanted by Blanks $ each $"));
        Assert.Empty(paper.Overlaps());
        Assert.All(paper.Words.SelectMany(words => words), word => Assert.True(word.BoundingBox is { Left: > 33, Right: < 578, Bottom: > 18, Top: < 765 }, word.Text));
    }

    private static byte[] Print(int lines, decimal setup, Func<int, string>? number = null)
    {
        var purchase = Purchase(lines, setup, number);
        Assert.True(purchase.Send(Today, "Hollis Verne", Scene.Now).Succeeded);
        var file = PurchaseOrderPaper.Print(new(purchase, Scene.Shop, Scene.Now));
        if (Environment.GetEnvironmentVariable("GRINDSHOP_PICTURES") is { } folder)
            File.WriteAllBytes(Path.Combine(folder, $"purchase-{lines}.pdf"), file);
        return file;
    }

    private static PurchaseOrder Purchase(int lines, decimal setup, Func<int, string>? number = null)
    {
        var vendor = new Vendor { Code = "TURNSTILE", Name = "Turnstile Cam Blanks", Kind = VendorKind.BlankSupplier, LeadTimeDays = 28 };
        var purchase = PurchaseOrder.Draft("PO-1007", vendor, "key", "Hollis Verne", Scene.Now, "Drafted.");
        for (var i = 1; i <= lines; i++)
            Assert.True(purchase.Want(Part(i, vendor, number?.Invoke(i) ?? ""), null, new PurchaseWish(10 + i, 120 + 1.25m * i, i == 2 ? setup : 0, new DateOnly(2027, 1, 3).AddDays(i)), Today, "Hollis Verne", Scene.Now).Succeeded);
        return purchase;
    }

    private static BlankPart Part(int i, Vendor vendor, string number)
    {
        var part = new Scene().Part();
        return new BlankPart
        {
            PartNumber = $"PART-{i:000}",
            EngineFamily = part.EngineFamily,
            Form = part.Form,
            Alloy = part.Alloy,
            Hardening = part.Hardening,
            Gear = part.Gear,
            Nominal = part.Nominal,
            FiringOrder = part.FiringOrder,
            LeastBaseCircleIn = part.LeastBaseCircleIn,
            Supplier = i == 2 ? part.Supplier : vendor,
            SupplierId = i == 2 ? 7 : vendor.Id,
            SupplierPart = i == 2 ? "the usual one's" : number,
            OtherSources = i == 2 ? [new BlankSource { Supplier = vendor, SupplierId = vendor.Id, SupplierPart = number, Cost = part.Cost, LeadTimeDays = part.LeadTimeDays, LeastQuantity = 1 }] : [],
            Cost = part.Cost,
            LeadTimeDays = part.LeadTimeDays,
        };
    }
}
