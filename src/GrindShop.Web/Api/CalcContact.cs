using GrindShop.Lobes;

namespace GrindShop.Web.Api;

internal sealed record ContactResponse(double PeakPressurePsi, double HalfWidthIn, double MaxShearPsi, double MaxShearDepthIn);

/// <summary>POST calc/contact: Hertz line contact.</summary>
internal static class CalcContact
{
    private const double LeastRadiusIn = .001;

    public static async Task<IResult> AnswerAsync(HttpRequest http)
    {
        var problems = new FieldProblems();
        if (await RequestReader.ReadAsync<ContactRequest>(http, problems) is not { } request)
            return problems.ToResult();
        CheckRadius(request.Radius1In, "radius1In", problems);
        CheckRadius(request.Radius2In, "radius2In", problems);
        if (problems.Any)
            return problems.ToResult();
        var contact = LineContact.Of(
            request.ForceLbf!.Value, request.WidthIn!.Value, request.Radius1In, request.Radius2In,
            request.Modulus1Psi!.Value, request.Modulus2Psi!.Value, request.Poisson1!.Value, request.Poisson2!.Value);
        if (contact.Succeeded)
            return Results.Ok(new ContactResponse(contact.Value.PeakPressurePsi, contact.Value.HalfWidthIn, contact.Value.MaxShearPsi, contact.Value.MaxShearDepthIn));
        problems.Add("radius2In", contact.Problem.ToString());
        return problems.ToResult();
    }

    private static void CheckRadius(double? radius, string field, FieldProblems problems)
    {
        if (radius is { } value && Math.Abs(value) < LeastRadiusIn)
            problems.Add(field, $"{field} must be at least {LeastRadiusIn} in or, concave, at most -{LeastRadiusIn} in; null is flat.");
    }
}
