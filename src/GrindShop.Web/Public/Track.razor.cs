using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Public;

/// <summary>The customer's own page of an order, by its secret code.</summary>
public sealed partial class Track : LivePage
{
    private Order? _order;
    private IReadOnlyList<Job> _jobs = [];
    private IReadOnlyList<OutgoingMail> _mails = [];
    private CatalogContent? _content;
    private string? _read;
    private bool _looked;

    /// <summary>The secret code that the customer was given.</summary>
    [Parameter]
    public string? Code { get; set; }

    [SupplyParameterFromQuery(Name = "new")]
    private string? New { get; set; }

    [Inject]
    private OrderDesk Desk { get; set; } = default!;

    [Inject]
    private JobFloor Floor { get; set; } = default!;

    [Inject]
    private Outbox Outbox { get; set; } = default!;

    private bool IsNew => New == "1";

    protected override async Task OnParametersSetAsync()
    {
        if (_looked && _read != Code)
            await ReadAsync();
    }

    protected override bool Concerns(string orderNumber) => orderNumber == _order?.Number;

    protected override async Task ReadAsync()
    {
        _read = Code;
        var code = TrackingCodes.Read(Code);
        _content = await Catalog.ContentAsync();
        _order = code is null ? null : await Desk.TrackAsync(code);
        _jobs = _order is null ? [] : await Floor.JobsOfAsync(_order.Number);
        _mails = _order is null ? [] : [.. (await Outbox.OfOrderAsync(_order.Number)).Where(mail => mail.State is MailState.Sent or MailState.Filed)];
        _looked = true;
    }
}
