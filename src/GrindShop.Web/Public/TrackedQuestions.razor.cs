using GrindShop.Shop.Engines;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Public;

/// <summary>What is being typed as the answer to one question.</summary>
public sealed class TypedReply
{
    public string Value { get; set; } = "";

    public string Words { get; set; } = "";

    public string? Problem { get; set; }
}

/// <summary>Questions of the shop on the customer's page. What was typed stays until it has been sent.</summary>
public sealed partial class TrackedQuestions
{
    private readonly Dictionary<int, TypedReply> _typed = [];
    private string _key = NewKey();
    private string? _refusal;
    private bool _thanks;
    private bool _busy;

    [Parameter, EditorRequired]
    public Order Order { get; set; } = default!;

    [Parameter, EditorRequired]
    public IReadOnlyList<EngineFamily> Families { get; set; } = [];

    [Parameter, EditorRequired]
    public ShopSettings Settings { get; set; } = default!;

    [Parameter, EditorRequired]
    public EventCallback Answered { get; set; }

    [Inject]
    private CustomerDesk CustomerDesk { get; set; } = default!;

    private bool MayAnswer => Order.IsOpen || Order.State == OrderState.Expired;

    private List<Question> Open => [.. Order.Questions.Where(question => question.LastReply is null)];

    private static string NewKey() => Guid.NewGuid().ToString("N");

    private ReplyField? FieldOf(Question question) => ReplyField.Of(question.Field, Families);

    private TypedReply TypedFor(Question question)
    {
        if (!_typed.TryGetValue(question.Id, out var typed))
            _typed[question.Id] = typed = new TypedReply();
        return typed;
    }

    private string Asked(Question question) => Order.OfCam(question.Cam, Families, question.Text);

    private string Said(Question question, Reply reply) =>
        string.Join("; ", new[] { reply.Value is { } value ? FieldOf(question)?.Say(value) ?? value : null, reply.Words }.OfType<string>());

    private async Task SendAsync()
    {
        foreach (var question in Order.Questions)
            TypedFor(question).Problem = FieldOf(question)?.Problem(TypedFor(question).Value);
        if (_typed.Values.Any(typed => typed.Problem is not null))
        {
            _refusal = "Look at the answers marked above; nothing has been sent yet.";
            return;
        }
        _busy = true;
        var outcome = await CustomerDesk.ReplyAsync(Order.TrackingCode, [.. _typed.Select(typed => new ReplyEntry(typed.Key, typed.Value.Value, typed.Value.Words))], _key);
        (_busy, _refusal, _thanks) = (false, outcome.Refusal?.Reason, outcome.Succeeded);
        if (!outcome.Succeeded)
            return;
        _typed.Clear();
        _key = NewKey();
        await Answered.InvokeAsync();
    }
}
