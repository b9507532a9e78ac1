using GrindShop.Shop;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Web.Public;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace GrindShop.Web.Desk;

/// <summary>A form for typing while listening: one line for the cam, read as it is typed, and who calls.</summary>
public sealed partial class CallPage : LivePage, IAsyncDisposable
{
    /// <summary>A pause in typing after which the shop answers and looks who calls.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(200);

    private const string Example = "230/236 @.050 .355 112+4 hyd roller";

    private static readonly (WorkKind, string)[] Kinds =
        [(WorkKind.NewGrind, "New cam"), (WorkKind.Regrind, "Regrind of their cam"), (WorkKind.GearReplacement, "New gear on their three-piece cam")];

    private readonly LatestOnly _judging = new(), _looking = new();
    private IReadOnlyList<EngineFamily> _families = [];
    private IReadOnlyList<KnownCaller> _callers = [];
    private IReadOnlyList<string> _problems = [];
    private CallHeard _heard = CallHeard.Of(new CallDraft(), []);
    private ShopRules? _rules;
    private TabKeeper<CallDraft>? _keeper;
