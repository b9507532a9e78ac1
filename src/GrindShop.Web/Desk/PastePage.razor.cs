using GrindShop.Shop.Orders;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Desk;

/// <summary>A mail that did not come by the mailbox is pasted in; before it is taken in, the page says what it would become.</summary>
public sealed partial class PastePage : KeyedPage<PasteDraft>
{
    private OrderOfMail? _order;
    private ElementReference _text;

    [Inject]
    private MailIntake Intake { get; set; } = default!;

    protected override string Keeps => "paste-draft";

    protected override Contact Who => Draft.Contact;

    protected override ElementReference First => _text;

    private string GoesTo => _order switch
    {
        { IsCustomers: true } order => $"It goes to order {order.Number}, as the customer's words.",
        { } order => $"It goes to order {order.Number}, marked as from another address: it is not the one that the order's customer gave.",
        _ => "It becomes a new order: what is understood goes into its fields, everything else into its notes.",
    };

    protected override async Task ReadAsync()
    {
        Families = (await Catalog.ContentAsync()).Families;
        Hear();
    }

    private async Task ChangeAsync(Action type)
    {
        type();
        Hear();
        await KeepAsync();
        await LookAsync();
    }

    protected override void Hear() => Heard = CallHeard.Of(new CallDraft { Line = MailEnquiry.Said(Draft.Mail) }, Families);

    /// <summary>About which order is it?</summary>
    protected override async Task AlsoLookAsync(CancellationToken cancel)
    {
        var order = await Intake.LookAsync(Draft.Mail, cancel);
        cancel.ThrowIfCancellationRequested();
        _order = order;
    }

    private Task ChooseAsync(Customer customer) => ChangeAsync(() => (Draft.Name, Draft.Email) = (customer.Name, customer.Email ?? Draft.Email));

    private async Task TakeAsync()
    {
        if (Taking)
            return;
        (Taking, Refusal) = (true, null);
        var taken = await Intake.PasteAsync(Draft.Key, Draft.Mail, await SignsAsAsync());
        (Taking, Refusal) = (false, taken.Refusal);
        if (taken.Value is not { } mail)
            return;
        await LeaveForAsync(mail.OrderNumber is { } number ? $"/desk/orders/{number}" : "/desk/mail");
    }
}
