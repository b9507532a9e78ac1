using System.Net.Mail;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>May this enquiry be taken in? The specification must be free of contradictions and complete enough to judge, the customer reachable unless they call or stand at the desk.</summary>
public static class EnquiryCheck
{
    public static IReadOnlyList<FieldProblem> Problems(Enquiry enquiry, CompletedSpec completed) => Problems(enquiry, completed.InTheWay);

    /// <param name="inTheWay">What stands in the way of ordering the cam itself.</param>
    public static IReadOnlyList<FieldProblem> Problems(Enquiry enquiry, IEnumerable<FieldProblem> inTheWay) => [.. inTheWay, .. ContactProblems(enquiry.Contact, enquiry.Channel), .. ReferenceProblems(enquiry)];

    /// <summary>What even the desk cannot take in: nobody to answer to, or text that cannot be kept. The cam itself may be incomplete or contradictory; it is asked for later.</summary>
    public static IReadOnlyList<FieldProblem> DeskProblems(Enquiry enquiry, IEnumerable<FieldProblem> inTheWay) =>
        [.. inTheWay.Where(problem => problem.Field is "notes" or "use" or "quantity"), .. ContactProblems(enquiry.Contact, enquiry.Channel), .. ReferenceProblems(enquiry), .. SaidProblems(enquiry)];

    private static IEnumerable<FieldProblem> ReferenceProblems(Enquiry enquiry) =>
        SpecCheck.Text(enquiry.CustomerReference, 100, "customerReference", "Reference") is { } problem ? [problem] : [];

    private static IEnumerable<FieldProblem> SaidProblems(Enquiry enquiry) => new[]
    {
        SpecCheck.Text(enquiry.AsSaid, SpecCheck.LongestNote, "line", "What was said"),
        SpecCheck.Text(enquiry.ReceivedCondition, CamIntake.LongestCondition, "receivedCondition", "The condition"),
        SpecCheck.Text(enquiry.Gear?.Marks, GearSwap.LongestMarks, "gear.marks", "The marks"),
    }.OfType<FieldProblem>();

    /// <summary>The e-mail address in its one spelling, or null.</summary>
    public static string? Email(Contact contact) => Blank(contact.Email)?.ToLowerInvariant();

    public static string? Phone(Contact contact) => Blank(contact.Phone);

    /// <summary>Who calls or stands at the desk may have no address: they come by or call again, and follow the order by the slip they were handed.</summary>
    private static bool MustBeReachable(OrderChannel channel) => channel is OrderChannel.Web or OrderChannel.Email;

    /// <summary>What is wrong with a name and the addresses of somebody who came this way.</summary>
    public static IEnumerable<FieldProblem> ContactProblems(Contact contact, OrderChannel channel)
    {
        if (string.IsNullOrWhiteSpace(contact.Name))
            yield return new FieldProblem("contact.name", "Give a name.");
        if (MustBeReachable(channel) && Email(contact) is null && Phone(contact) is null)
            yield return new FieldProblem("contact.email", "Give an e-mail address or a phone number, so that the shop can answer.");
        if (Email(contact) is { Length: <= 200 } email && !IsAddress(email))
            yield return new FieldProblem("contact.email", "This is not an e-mail address; one looks like name@example.com.");
        if (Phone(contact) is { Length: <= 40 } phone && (phone.Count(char.IsAsciiDigit) < 7 || phone.Any(char.IsLetter)))
            yield return new FieldProblem("contact.phone", "A phone number has at least 7 digits and no letters.");
        FieldProblem?[] texts =
        [
            SpecCheck.Text(contact.Name, 100, "contact.name", "Name"),
            SpecCheck.Text(contact.Email, 200, "contact.email", "E-mail address"),
            SpecCheck.Text(contact.Phone, 40, "contact.phone", "Phone number"),
        ];
        foreach (var problem in texts.OfType<FieldProblem>())
            yield return problem;
    }

    private static bool IsAddress(string email) => MailAddress.TryCreate(email, out var address) && address.Address == email && address.Host.Contains('.');

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
