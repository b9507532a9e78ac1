using System.ComponentModel.DataAnnotations;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using GrindShop.Shop.Records;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace GrindShop.Web.Api;

/// <summary>The HTTP API: every address, who may call it, what it takes and answers.</summary>
internal static class ShopApi
{
    public static void AddShopApi(this IServiceCollection services)
    {
        services.AddProblemDetails();
        services.AddScoped<ApiBook>();
        services.AddOpenApi(ApiBook.Document, Describe);
        services.ConfigureHttpJsonOptions(json =>
        {
            ShopJson.Configure(json.SerializerOptions).DefaultIgnoreCondition = JsonIgnoreCondition.Never;
            json.SerializerOptions.Converters.Add(new FiniteNumber());
        });
    }

    private static void Describe(OpenApiOptions api)
    {
        api.AddDocumentTransformer((document, _, _) =>
        {
            document.Info = new() { Title = "GrindShop API", Version = ApiBook.Document, Description = "Lengths in inches; cam degrees unless a name says crank." };
            return Task.CompletedTask;
        });
        api.AddSchemaTransformer((schema, context, _) =>
        {
            // The writer of finite numbers hides from the document that they are numbers.
            if (context.JsonTypeInfo.Type == typeof(double))
                schema.Type = JsonSchemaType.Number;
            else if (context.JsonTypeInfo.Type == typeof(double?))
                schema.Type = JsonSchemaType.Number | JsonSchemaType.Null;
            if (context.JsonPropertyInfo?.AttributeProvider?.GetCustomAttributes(typeof(AllowedValuesAttribute), true).FirstOrDefault() is AllowedValuesAttribute allowed)
                schema.Enum = [.. allowed.Values.Select(value => JsonValue.Create((string)value!))];
            return Task.CompletedTask;
        });
    }

    public static void MapShopApi(this WebApplication app)
    {
        app.MapOpenApi().AllowAnonymous();
        var api = app.MapGroup("/api/v1").AllowAnonymous().DisableAntiforgery();
        MapCalculations(api.MapGroup("/calc").WithTags("Calculations"));
        MapCatalog(api.MapGroup("").WithTags("Catalog"));
        MapEnquiries(api.MapGroup("").WithTags("Enquiries"));
        app.MapFallback("/api/v1/{**rest}", Nothing).AllowAnonymous();
    }

    private static IResult Nothing(HttpRequest http) => HttpMethods.IsPost(http.Method) && !http.HasJsonContentType()
        ? Results.Problem(statusCode: StatusCodes.Status415UnsupportedMediaType, title: "Send JSON, with the header Content-Type: application/json.")
        : Results.Problem(statusCode: StatusCodes.Status404NotFound, title: "There is nothing at this address.");

    private static void MapCalculations(RouteGroupBuilder calc)
    {
        Calculation<LobeRequest, LobeResponse>(calc.MapPost("/lobe", CalcLobe.AnswerAsync), "Durations, limits and points of one lobe");
        Calculation<StockRequest, StockResponse>(calc.MapPost("/stock", CalcStock.AnswerAsync), "Does a lobe come out of a blank's lobe?");
        Calculation<WindowRequest, WindowResponse>(calc.MapPost("/window", CalcWindow.AnswerAsync), "Lobe separations and centrelines that a blank has metal for");
        Calculation<MasterRequest, MasterResponse>(calc.MapPost("/master", CalcMaster.AnswerAsync), "The same master on another base circle or wheel");
        Calculation<TimingRequest, TimingResponse>(calc.MapPost("/timing", CalcTiming.AnswerAsync), "Valve events");
        Calculation<ContactRequest, ContactResponse>(calc.MapPost("/contact", CalcContact.AnswerAsync), "Hertz line contact");
    }

    private static void MapCatalog(RouteGroupBuilder api)
    {
        api.MapGet("/engines", CatalogEndpoints.EnginesAsync).WithSummary("Engine families");
        api.MapGet("/blanks", CatalogEndpoints.BlanksAsync).WithSummary("Blanks of the catalog, public facts");
        Calculation<SpecFields, FeasibilityResponse>(api.MapPost("/feasibility", FeasibilityEndpoint.AnswerAsync), "From which blanks can this cam be ground?");
    }

    private static void MapEnquiries(RouteGroupBuilder api)
    {
        Calculation<EnquiryFields, EnquiryResponse>(api.MapPost("/enquiries", EnquiryEndpoints.SubmitAsync), "Send a specification; the same Idempotency-Key again answers with the same tracking code");
        api.MapGet("/track/{code}", EnquiryEndpoints.TrackAsync).WithSummary("Where an order stands").Produces<TrackResponse>().ProducesProblem(StatusCodes.Status404NotFound);
    }

    private static void Calculation<TRequest, TResponse>(RouteHandlerBuilder endpoint, string summary)
        where TRequest : notnull => endpoint.WithSummary(summary).Accepts<TRequest>("application/json").Produces<TResponse>().ProducesValidationProblem();
}
