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
    public async Task<IReadOnlyList<PrintedPaper>> PrintAsync(string paper, string number, CancellationToken cancel) => paper switch
    {
        Letters.SpecCard => await SpecCardsAsync(number, cancel),
        VendorLetter.Paper => await PurchaseAsync(number, cancel) is { } purchase ? [purchase] : [],
        _ => await QuoteAsync(paper, number, cancel) is { } quote ? [quote] : [],
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

    /// <summary>One of every cam that has shipped.</summary>
    private async Task<IReadOnlyList<PrintedPaper>> SpecCardsAsync(string orderNumber, CancellationToken cancel)
    {
        var content = await catalog.ContentAsync(cancel);
        return [.. (await floor.JobsOfAsync(orderNumber, cancel)).Where(job => job.HasShippedCard).Select(job => SpecCard(job, content))];
    }

    private PrintedPaper SpecCard(Job job, CatalogContent content)
    {
        var facts = new SpecCardFacts(job, content.Rules.Settings, clock.GetUtcNow()) { Gear = job.Cam.GearAdvice(content) };
        return new PrintedPaper($"spec-card-{job.Code}.pdf", SpecCardPaper.Print(facts));
    }
}
