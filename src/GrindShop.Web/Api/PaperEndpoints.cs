using GrindShop.Papers;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Web.Public;
using GrindShop.Web.Security;
using GrindShop.Web.Shell;

namespace GrindShop.Web.Api;

/// <summary>The papers as PDF, printed from the present state of the job.</summary>
internal static class PaperEndpoints
{
    private const string Pdf = "application/pdf";

    public static void MapPapers(this WebApplication app)
    {
        var papers = app.MapGroup("/papers").ExcludeFromDescription();
        papers.MapGet("/traveler/{code}.pdf", TravelerAsync).RequireAuthorization(Policies.Staff);
        papers.MapGet("/label/{lot}.pdf", LabelAsync).RequireAuthorization(Policies.Staff);
        papers.MapGet("/slip/{number}.pdf", SlipAsync).RequireAuthorization(Policies.Staff);
        papers.MapGet("/spec-card/job/{code}.pdf", SpecCardOfJobAsync).RequireAuthorization(Policies.Staff);
        papers.MapGet("/purchase/{number}.pdf", PurchaseAsync).RequireAuthorization(Policies.Office);
        papers.MapGet("/spec-card/{trackingCode}.pdf", SpecCardOfCustomerAsync).AllowAnonymous();
        papers.MapGet("/spec-card/{trackingCode}/{job}.pdf", SpecCardOfCustomerAsync).AllowAnonymous();
        papers.MapGet("/quote/{number}.pdf", QuoteOfDeskAsync).RequireAuthorization(Policies.Staff);
        papers.MapGet("/quote/{trackingCode}/{number}.pdf", QuoteOfCustomerAsync).AllowAnonymous();
    }

    private static async Task<IResult> QuoteOfDeskAsync(string number, HttpRequest http, IConfiguration configuration, OrderDesk desk, Catalog catalog, TimeProvider clock, CancellationToken cancel) =>
        await desk.FindByQuoteAsync(number.Trim().ToUpperInvariant(), cancel) is { } order
            ? await QuoteAsync(order, number, Address(http, configuration), catalog, clock, cancel)
            : Results.NotFound();

    private static async Task<IResult> QuoteOfCustomerAsync(
        string trackingCode, string number, HttpRequest http, IConfiguration configuration, OrderDesk desk, Catalog catalog, TimeProvider clock, CancellationToken cancel) =>
        await desk.TrackAsync(TrackingCodes.Read(trackingCode) ?? "", cancel) is { } order
            ? await QuoteAsync(order, number, Address(http, configuration), catalog, clock, cancel)
            : Results.NotFound();

    private static async Task<IResult> QuoteAsync(Order order, string number, string address, Catalog catalog, TimeProvider clock, CancellationToken cancel)
    {
        if (order.Quotes.FirstOrDefault(quote => string.Equals(quote.Number, number.Trim(), StringComparison.OrdinalIgnoreCase)) is not { } quote)
            return Results.NotFound();
        var settings = (await catalog.ContentAsync(cancel)).Rules.Settings;
        return Results.File(QuotePaper.Print(new QuoteFacts(order, quote, settings, $"{address}/track/{order.TrackingCode}", clock.GetUtcNow())), Pdf);
    }

    private static string Address(HttpRequest http, IConfiguration configuration) => ShopAddress.Given(configuration) ?? $"{http.Scheme}://{http.Host}";

    private static async Task<IResult> TravelerAsync(string code, HttpRequest http, IConfiguration configuration, JobFloor floor, Catalog catalog, TimeProvider clock, CancellationToken cancel)
    {
        if (await floor.FindAsync(code, cancel) is not { } job)
            return Results.NotFound();
        var content = await catalog.ContentAsync(cancel);
        var address = $"{Address(http, configuration)}/floor/jobs/{job.Code}";
        var facts = new TravelerFacts(job, content.Rules.Settings, address, clock.GetUtcNow()) { Gear = job.Cam.GearAdvice(content) };
        return Results.File(TravelerPaper.Print(facts), Pdf);
    }

    private static async Task<IResult> SlipAsync(string number, HttpRequest http, IConfiguration configuration, OrderDesk desk, Catalog catalog, TimeProvider clock, CancellationToken cancel)
    {
        if (await desk.FindAsync(number.Trim().ToUpperInvariant(), cancel) is not { } order)
            return Results.NotFound();
        var settings = (await catalog.ContentAsync(cancel)).Rules.Settings;
        return Results.File(SlipPaper.Print(new SlipFacts(order, settings, $"{Address(http, configuration)}/track/{order.TrackingCode}", clock.GetUtcNow())), Pdf);
    }

    private static async Task<IResult> PurchaseAsync(string number, Purchasing purchasing, Catalog catalog, TimeProvider clock, CancellationToken cancel)
    {
        if (await purchasing.FindAsync(number, cancel) is not { } purchase)
            return Results.NotFound();
        var settings = (await catalog.ContentAsync(cancel)).Rules.Settings;
        return Results.File(PurchaseOrderPaper.Print(new PurchaseOrderFacts(purchase, settings, clock.GetUtcNow())), Pdf);
    }

    private static async Task<IResult> LabelAsync(string lot, HttpRequest http, IConfiguration configuration, StockRoom stock, Catalog catalog, TimeProvider clock, CancellationToken cancel)
    {
        if (await stock.FindAsync(lot, cancel) is not { } found)
            return Results.NotFound();
        var settings = (await catalog.ContentAsync(cancel)).Rules.Settings;
        var address = $"{Address(http, configuration)}/lots/{found.LotNumber}";
        return Results.File(LotLabelPaper.Print(new LotLabelFacts(found, settings, address, clock.GetUtcNow())), Pdf);
    }

    private static async Task<IResult> SpecCardOfJobAsync(string code, JobFloor floor, Catalog catalog, TimeProvider clock, CancellationToken cancel) =>
        await floor.FindAsync(code, cancel) is { HasSpecCard: true } job ? await SpecCardAsync(job, catalog, clock, cancel) : Results.NotFound();

    /// <summary>For the customer once the cam has shipped.</summary>
    private static async Task<IResult> SpecCardOfCustomerAsync(string trackingCode, string? job, OrderDesk desk, JobFloor floor, Catalog catalog, TimeProvider clock, CancellationToken cancel)
    {
        if (await desk.TrackAsync(TrackingCodes.Read(trackingCode) ?? "", cancel) is not { } order)
            return Results.NotFound();
        var shipped = (await floor.JobsOfAsync(order.Number, cancel)).LastOrDefault(one => one.HasShippedCard && (job is null || one.Code == job));
        return shipped is null ? Results.NotFound() : await SpecCardAsync(shipped, catalog, clock, cancel);
    }

    private static async Task<IResult> SpecCardAsync(Job job, Catalog catalog, TimeProvider clock, CancellationToken cancel)
    {
        var content = await catalog.ContentAsync(cancel);
        return Results.File(SpecCardPaper.Print(new SpecCardFacts(job, content.Rules.Settings, clock.GetUtcNow()) { Gear = job.Cam.GearAdvice(content) }), Pdf);
    }
}
