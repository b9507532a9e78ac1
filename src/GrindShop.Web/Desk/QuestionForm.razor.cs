using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Desk;

/// <summary>The questions that follow from the specification, ready to be sent; each may be reworded or left out.</summary>
public sealed partial class QuestionForm
{
    private List<Line> _lines = [];
    private string _own = "";
    private int _ownCam;
    private string _key = NewKey();
    private uint _builtFor;
    private Letter? _preview;
    private bool _toPreview;
    private bool _busy;
    private ElementReference _shown;

    [Parameter, EditorRequired]
    public OrderWork Work { get; set; } = default!;

    [Parameter, EditorRequired]
    public CatalogContent Content { get; set; } = default!;

    [Parameter, EditorRequired]
    public string By { get; set; } = "";

    [Parameter, EditorRequired]
    public EventCallback Acted { get; set; }

    [Inject]
    private OrderDesk OrderDesk { get; set; } = default!;

    [Inject]
    private CustomerMail Mail { get; set; } = default!;

    private Order Order => Work.Order!;

    /// <summary>The cam that the desk's own question is about: the one chosen while it is there, else the first.</summary>
    private int OwnCam => Order.Cam(_ownCam)?.Ordinal ?? Order.First.Ordinal;

    private static string NewKey() => Guid.NewGuid().ToString("N");

    /// <summary>A changed order brings other questions; what was typed for those that stay is kept.</summary>
    protected override void OnParametersSet()
    {
        if (_builtFor == Order.Version)
            return;
        var typed = _lines.ToDictionary(line => line.Id);
        _lines = [.. Proposed().Select(line => typed.GetValueOrDefault(line.Id) ?? line)];
        (_builtFor, _preview) = (Order.Version, null);
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!_toPreview)
            return;
        _toPreview = false;
        await _shown.FocusAsync();
    }

    /// <summary>One question a field and kind at a time.</summary>
    private IEnumerable<Line> Proposed() => (
        from cam in Order.Cams
        from question in WorkQuestions.Of(cam.Entry, Content.Family(cam.Spec.EngineFamily))
        where !IsAsked(cam.Ordinal, question)
        select new Line(cam.Ordinal, question, Order.Cams.Count > 1) { Text = question.Text, IsChosen = question.Kind != QuestionKind.WouldHelp }).DistinctBy(line => line.Id);

    /// <summary>Asked already and not answered yet.</summary>
    private bool IsAsked(int cam, SpecQuestion question) =>
        Order.Questions.Any(asked => asked.Cam == cam && asked.LastReply is null && (asked.Text == question.Text || asked.Field == question.Field && question.Kind != QuestionKind.Contradiction));

    private List<QuestionEntry> Chosen() =>
    [
        .. _lines.Where(line => line.IsChosen).Select(line => new QuestionEntry(line.Cam, line.Field, line.Text)),
        .. string.IsNullOrWhiteSpace(_own) ? Array.Empty<QuestionEntry>() : [new QuestionEntry(OwnCam, null, _own)],
    ];

    private async Task PreviewAsync()
    {
        _preview = await Mail.PreviewAsync(Order, Chosen());
        _toPreview = true;
    }

    private async Task AskAsync()
    {
        _busy = true;
        var chosen = Chosen();
        if (await Work.ActAsync(order => OrderDesk.AskAsync(order.Number, order.Version, chosen, _key, By), "The questions are sent; the order waits for the customer."))
            (_own, _key) = ("", NewKey());
        _busy = false;
        await Acted.InvokeAsync();
    }

    /// <summary>One question that may be sent.</summary>
    private sealed class Line(int cam, SpecQuestion question, bool namesCam)
    {
        public int Cam { get; } = cam;

        /// <summary>A contradiction is answered in words: it is about more than one field.</summary>
        public string? Field { get; } = question.Kind == QuestionKind.Contradiction ? null : question.Field;

        public string Id { get; } = $"{cam}-{question.Field.Replace('.', '-')}-{question.Kind}";

        public string Title { get; } = $"{(namesCam ? $"Cam {cam}: " : "")}{(question.Kind == QuestionKind.Contradiction ? "does not go together" : question.Kind == QuestionKind.Missing ? "missing" : "would help")}: {SpecWords.Name(question.Field)}";

        public string Text { get; set; } = "";

        public bool IsChosen { get; set; }
    }
}
