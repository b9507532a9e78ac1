using System.ComponentModel.DataAnnotations;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;
using GrindShop.Web.Public;

namespace GrindShop.Web.Api;

public sealed class ContactFields
{
    [Required, MaxLength(100)]
    public string? Name { get; set; }

    [MaxLength(200)]
    public string? Email { get; set; }

    [MaxLength(40)]
    public string? Phone { get; set; }
}

/// <summary>A specification with everything that makes it an enquiry.</summary>
public sealed class EnquiryFields : SpecFields
{
    [Required]
    public ContactFields? Contact { get; set; }

    [MaxLength(100)]
    public string? Reference { get; set; }

    [MaxLength(SpecCheck.LongestText)]
    public string? Use { get; set; }

    [MaxLength(SpecCheck.LongestNote)]
    public string? Notes { get; set; }
}

internal sealed record EnquiryResponse(string TrackingCode);

internal sealed record TrackStage(string Stage, DateTimeOffset? DoneAt);

internal sealed record TrackResponse(string Order, OrderState State, DateTimeOffset ReceivedAt, DateOnly? PromisedOn, decimal? PriceUsd, Verdict? Verdict, IReadOnlyList<TrackStage> Stages)
{
    /// <summary>Every cam of the order with the jobs of its pieces.</summary>
    public IReadOnlyList<TrackCam> Cams { get; init; } = [];

    /// <summary>Address of the quote that the price stands on.</summary>
    public string? Quote { get; init; }
}

internal sealed record TrackCam(int Cam, WorkKind Kind, string? EngineFamily, int Pieces, int Shipped, Verdict? Verdict, IReadOnlyList<TrackJob> Jobs);

/// <param name="Job">The job's code.</param>
/// <param name="Next">The stage that waits to be done; null when it has shipped or ended.</param>
/// <param name="ShippedAt">When it left.</param>
/// <param name="SpecCard">Address of its spec card once it has shipped.</param>
/// <param name="Stages">Its whole route.</param>
internal sealed record TrackJob(string Job, string? Next, DateTimeOffset? ShippedAt, string? SpecCard, IReadOnlyList<TrackStage> Stages);

/// <summary>POST enquiries and GET track: how a customer's program sends a specification and follows it.</summary>
internal static class EnquiryEndpoints
{
    public const string KeyHeader = "Idempotency-Key";

    public static async Task<IResult> SubmitAsync(HttpRequest http, SpecIntake intake, CancellationToken cancel)
    {
        var problems = new FieldProblems();
        var key = http.Headers[KeyHeader].ToString().Trim();
        if (key.Length is < 8 or > 180)
            problems.Add(KeyHeader, $"The header {KeyHeader} is required: 8 to 180 characters, a new one for every new enquiry.");
        var fields = await RequestReader.ReadAsync<EnquiryFields>(http, problems);
        if (problems.Any || fields is null)
            return problems.ToResult();
        var enquiry = Enquiry($"api:{key}", fields, problems);
        if (problems.Any)
            return problems.ToResult();
        return Answer(await intake.SubmitAsync(enquiry, "customer", cancel), problems);
    }

    public static async Task<IResult> TrackAsync(string code, OrderDesk desk, JobFloor floor, CancellationToken cancel) =>
        await desk.TrackAsync(TrackingCodes.Read(code) ?? "", cancel) is { } order
            ? Results.Ok(Tracked(order, await floor.JobsOfAsync(order.Number, cancel)))
            : Results.Problem(statusCode: StatusCodes.Status404NotFound, title: "There is no order of this tracking code.");

    private static Enquiry Enquiry(string key, EnquiryFields fields, FieldProblems problems) => new()
    {
        SubmitKey = key,
        Channel = OrderChannel.Web,
        Spec = fields.ToSpec(problems) with { Use = fields.Use, Notes = fields.Notes },
        Contact = new Contact { Name = fields.Contact!.Name, Email = fields.Contact.Email, Phone = fields.Contact.Phone },
        CustomerReference = fields.Reference,
    };

    private static IResult Answer(SubmitResult result, FieldProblems problems)
    {
        if (result.Order is { } order)
            return Results.Ok(new EnquiryResponse(order.TrackingCode));
        if (result.Refusal is { } refusal)
            return Results.Problem(statusCode: StatusCodes.Status422UnprocessableEntity, title: refusal.Reason);
        problems.AddRange(result.Problems.Select(SpecFields.Rename));
        return problems.ToResult();
    }

    private static TrackResponse Tracked(Order order, IReadOnlyList<Job> jobs) => new(
        order.Number, order.State, order.ReceivedAt, order.PromisedOn, order.Price > 0 ? order.Price : null, order.First.Verdict,
        [.. jobs.SelectMany(Stages)])
    {
        Cams = [.. order.ToldCams.Select(cam => new TrackCam(
            cam.Ordinal, cam.Kind, cam.Spec.EngineFamily, cam.Quantity, cam.Shipped, cam.Verdict, [.. jobs.Where(job => job.OrderCamId == cam.Id).Select(job => Tracked(order, job))]))],
        Quote = order.CurrentQuoteNumber is { } number ? $"/papers/quote/{order.TrackingCode}/{number}.pdf" : null,
    };

    private static TrackJob Tracked(Order order, Job job) => new(
        job.Code, job.Current?.Stage.Words(), job.ShippedAt, job.HasShippedCard ? $"/papers/spec-card/{order.TrackingCode}/{job.Code}.pdf" : null, [.. Stages(job)]);

    private static IEnumerable<TrackStage> Stages(Job job) => job.Steps.Select(step => new TrackStage(step.Stage.Words(), step.DoneAt));
}
