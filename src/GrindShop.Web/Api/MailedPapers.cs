using GrindShop.Papers;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;

namespace GrindShop.Web.Api;

/// <summary>Prints the papers that go with mails.</summary>
internal sealed class MailedPapers(OrderDesk desk, JobFloor floor, Purchasing purchasing, Catalog catalog, MailSettings mail, TimeProvider clock)
{
    public async Task<PrintedPaper?> PrintAsync(string paper, string number, CancellationToken cancel) => paper switch
    {
        Letters.SpecCard => await SpecCardAsync(number, cancel),
        VendorLetter.Paper => await PurchaseAsync(number, cancel),
        _ => await QuoteAsync(paper, number, cancel),
    };

    private async Task<PrintedPaper?> PurchaseAsync(string number, CancellationToken cancel)
    {
        if (await purchasing.FindAsync(number, cancel) is not { } purchase)
            return null;
        var settings = (await catalog.ContentAsync(cancel)).Rules.Settings;
        return new PrintedPaper($"{purchase.Number}.pdf", PurchaseOrderPaper.Print(new PurchaseOrderFacts(purchase, settings, clock.GetUtcNow())));
    }

    private async Task<PrintedPaper?> QuoteAsync(string number, string orderNumber, CancellationToken cancel)
    {
        if (await desk.FindAsync(orderNumber, cancel) is not { } order || order.Quotes.FirstOrDefault(quote => quote.Number == number) is not { } quote)
            return null;
        var settings = (await catalog.ContentAsync(cancel)).Rules.Settings;
        var facts = new QuoteFacts(order, quote, settings, $"{mail.PublicAddress}/track/{order.TrackingCode}", clock.GetUtcNow());
        return new PrintedPaper($"quote-{quote.Number}.pdf", QuotePaper.Print(facts));
    }

    private async Task<PrintedPaper?> SpecCardAsync(string orderNumber, CancellationToken cancel)
    {
        if ((await floor.JobsOfAsync(orderNumber, cancel)).LastOrDefault(job => job.ShippedAt is not null && job.HasSpecCard) is not { } job)
            return null;
        var content = await catalog.ContentAsync(cancel);
        var facts = new SpecCardFacts(job, content.Rules.Settings, clock.GetUtcNow()) { Gear = job.Cam.GearAdvice(content) };
        return new PrintedPaper($"spec-card-{job.Code}.pdf", SpecCardPaper.Print(facts));
    }
}
