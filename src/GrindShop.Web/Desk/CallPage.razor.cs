using GrindShop.Shop;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Web.Public;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Desk;

/// <summary>A form for typing while listening: one line for the cam, read as it is typed, and who calls.</summary>
public sealed partial class CallPage : KeyedPage<CallDraft>
{
    private const string Example = "230/236 @.050 .355 112+4 hyd roller";

    private static readonly (WorkKind, string)[] Kinds =
        [(WorkKind.NewGrind, "New cam"), (WorkKind.Regrind, "Regrind of their cam"), (WorkKind.GearReplacement, "New gear on their three-piece cam")];

    private readonly LatestOnly _judging = new();
    private IReadOnlyList<string> _problems = [];
    private ShopRules? _rules;
    private ElementReference _line;

    [Inject]
    private SpecIntake Intake { get; set; } = default!;

    protected override string Keeps => "call-draft";

    protected override Contact Who => Draft.Contact;

    protected override ElementReference First => _line;

    private string Verdict => Heard.Answer is not { } answer ? NoVerdict
        : Heard.Cam.Kind == WorkKind.Regrind ? string.Join(' ', answer.Reasons.Take(2))
        : answer.Best is { } best ? $"{answer.Verdict.Words()}: {best.PartNumber}{(best.InStock ? "" : $", about {best.LeadTimeDays} days")}"
        : $"{answer.Verdict.Words()}. {answer.Reasons.FirstOrDefault()}";

    private string NoVerdict => Heard.Cam.Kind switch
    {
        WorkKind.NewGrind => "No answer yet: engine, lifter, intake lift and duration make one",
        WorkKind.Regrind => "No answer yet: the cam to grind to makes one, with what was measured on the used cam. Unmeasured, it is judged at receipt",
        _ => "A new gear needs no lobes: engine, marks, gears and condition are enough",
    };

    public override ValueTask DisposeAsync()
    {
        _judging.Dispose();
        return base.DisposeAsync();
    }

    protected override async Task ReadAsync()
    {
        var content = await Catalog.ContentAsync();
        (Families, _rules) = (content.Families, content.Rules);
        Hear();
    }

    protected override Task GoOnAsync() => Task.WhenAll(JudgeAsync(), LookAsync());

    private Task LineAsync(string text)
    {
        Draft.Line = text;
        return HearAsync();
    }

    private Task KindAsync(WorkKind kind)
    {
        Draft.Kind = kind;
        return HearAsync();
    }

    private Task HereAsync(ChangeEventArgs change)
    {
        Draft.IsExpected = change.Value is not true;
        return HearAsync();
    }

    private async Task HearAsync()
    {
        Hear();
        await KeepAsync();
        await JudgeAsync();
    }

    protected override void Hear() => Heard = CallHeard.Of(Draft, Families) is var heard && heard.AsksLike(Heard) ? heard with { Answer = Heard.Answer } : heard;

    private async Task JudgeAsync()
    {
        var cancel = _judging.Next();
        if (!Heard.CanBeJudged || Heard.Answer is not null)
            return;
        await Task.Delay(Pause, Clock, cancel);
        var (grind, cam) = (Heard.Grind!, Heard.Cam);
        var answer = await Task.Run(async () => cam.Kind == WorkKind.NewGrind ? await Catalog.JudgeAsync(grind, cancel) : (await Catalog.LookAsync(cam, cancel)).Answer, cancel);
        cancel.ThrowIfCancellationRequested();
        Heard = Heard with { Answer = answer };
        StateHasChanged();
    }

    private async Task WhoAsync(Action type)
    {
        type();
        await KeepAsync();
        await LookAsync();
    }

    /// <summary>Another name is somebody else.</summary>
    private Task NameAsync(string name) => WhoAsync(() => (Draft.Name, Draft.Customer) = (name, null));

    /// <summary>The caller is a known customer: what is known of them is put into the form, and the order goes to them.</summary>
    private async Task ChooseAsync(Customer customer)
    {
        (Draft.Name, Draft.Phone, Draft.Email) = (customer.Name, customer.Phone ?? Draft.Phone, customer.Email ?? Draft.Email);
        Draft.Customer = customer.Id;
        await KeepAsync();
        await LookAsync();
    }

    private async Task TakeAsync()
    {
        if (Taking)
            return;
        (Taking, Refusal) = (true, null);
        await KeepAsync();
        var result = await Intake.TakeAsync(Draft.Enquiry(Heard.Reading) with { AsSaid = string.IsNullOrWhiteSpace(Heard.Line) ? null : Heard.Line.Trim() }, await SignsAsAsync());
        (_problems, Refusal, Taking) = ([.. result.Problems.Select(problem => problem.Message)], result.Refusal, false);
        if (result.Order is not { } order)
            return;
        await LeaveForAsync($"/desk/orders/{order.Number}");
    }

    private Task TakeAsNewAsync()
    {
        Draft.Key = new CallDraft().Key;
        return TakeAsync();
    }
}
