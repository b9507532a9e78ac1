using GrindShop.Shop;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;

namespace GrindShop.Web.Public;

/// <summary>This part: sending it to the shop.</summary>
public sealed partial class SpecForm
{
    private IReadOnlyList<FieldProblem> _problemsToFix = [];
    private FieldSource _contactSource = default!;
    private ProblemSummary? _summary;
    private Refusal? _refusal;
    private bool _sending, _showProblems;

    private async Task SendAsync()
    {
        if (_sending || _guided)
            return;
        (_sending, _showProblems, _refusal) = (true, true, null);
        _typing.Next();
        await ReadAsync();
        if (_problemsToFix.Count == 0)
            await TakeAsync(await Intake.SubmitAsync(Enquiry(), "customer"));
        _sending = false;
        await PointToProblemsAsync();
    }

    private async Task TakeAsync(SubmitResult result)
    {
        ShowProblems(result.Problems);
        _refusal = result.Refusal;
        if (result.Order is not { } order)
            return;
        await EndAsync();
        Navigation.NavigateTo($"/track/{order.TrackingCode}?new=1");
    }

    private async Task PointToProblemsAsync()
    {
        StateHasChanged();
        // The summary is there only once this event's own rendering is over.
        await Task.Yield();
        if (_problemsToFix.Count > 0 && _summary is not null)
            await _summary.FocusAsync();
    }

    private Task SendAsNewAsync()
    {
        Kept!.SubmitKey = new SpecFormState().SubmitKey;
        return SendAsync();
    }

    private void ShowProblems(IReadOnlyList<FieldProblem> problems)
    {
        _problemsToFix = problems;
        _contactSource = _contactSource with { Problems = problems, Explains = Explains };
    }

    private Enquiry Enquiry() => new()
    {
        SubmitKey = Kept!.SubmitKey,
        Channel = OrderChannel.Web,
        Spec = _reading.Spec,
        Contact = new Contact { Name = _draft.Text("contact.name"), Email = _draft.Text("contact.email"), Phone = _draft.Text("contact.phone") },
        CustomerReference = _draft.Text("customerReference"),
    };
}
