using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Grinds;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Starting;

namespace GrindShop.Shop.Demo;

/// <summary>Everything that stands in a scenario's folder, read and checked.</summary>
public sealed record ShopScenario(
    ShopSettings Settings,
    IReadOnlyList<EngineFamily> Families,
    IReadOnlyList<Vendor> Vendors,
    IReadOnlyList<BlankPart> Blanks,
    IReadOnlyList<ScenarioLot> Lots,
    IReadOnlyList<CompatibilityRule> Rules,
    ScenarioPrices Prices,
    StartRules StartRules,
    IReadOnlyList<ScenarioGrind> Grinds,
    IReadOnlyList<ScenarioPerson> People,
    IReadOnlyList<Contact> Customers,
    IReadOnlyList<ScenarioOrder> Orders,
    IReadOnlyList<ScenarioPurchase> Purchases,
    IReadOnlyList<ScenarioTerms> Terms);

/// <summary>A lot of blanks as it came in, what was measured on it then, and why it is held back now.</summary>
public sealed record ScenarioLot(string LotNumber, BlankPart Part, int Quantity, string Location, int ReceivedDaysAgo)
{
    public string? HeatNumber { get; init; }

    public string? Certificate { get; init; }

    public SampleFigures? Sample { get; init; }

    public int SampledDaysAgo { get; init; }

    public string? Quarantine { get; init; }
}

/// <summary>The price list; a list of one's own may do without prices for repairs and without quantity breaks.</summary>
public sealed record ScenarioPrices(IReadOnlyList<ScenarioBasePrice> BasePrices, IReadOnlyList<PriceAdder> Adders)
{
    public IReadOnlyList<ScenarioRepairPrice> Repairs { get; init; } = [];

    public IReadOnlyList<QuantityBreak> QuantityBreaks { get; init; } = [];
}

public sealed record ScenarioRepairPrice(string EngineFamily, WorkKind Kind, decimal Amount);

/// <summary>A grind of the shop's list.</summary>
public sealed record ScenarioGrind(string Code, EngineFamily Family, GrindEntry Entry);

public sealed record ScenarioBasePrice(string EngineFamily, LifterType Lifter, decimal Amount);

/// <summary>Somebody who may sign in.</summary>
public sealed record ScenarioPerson(string UserName, string Name, string Role, string Password);

/// <summary>One cam of an order and the blank it is, or would be, ground from.</summary>
public sealed class ScenarioCam(CamEntry entry, BlankPart? blank)
{
    public CamEntry Entry { get; } = entry;

    public BlankPart? Blank { get; } = blank;
}

/// <summary>An order with how far it has come. Days count back from the day of loading, or forward from the step before.</summary>
public sealed record ScenarioOrder
{
    /// <summary>Where the row stands, for messages.</summary>
    public required string Row { get; init; }

    public required int Order { get; init; }

    public required int ReceivedDaysAgo { get; init; }

    public required OrderChannel Channel { get; init; }

    public required Contact Customer { get; init; }

    /// <summary>The cams of the order, at least one; jobs are played for the first.</summary>
    public required IReadOnlyList<ScenarioCam> Cams { get; init; }

    public ScenarioCam First => Cams[0];

    /// <summary>What the customer was asked and has not answered; for an order that waits for it.</summary>
    public string? Asked { get; init; }

    public required OrderState State { get; init; }

    /// <summary>The stage that an order in work waits at.</summary>
    public Stage? At { get; init; }

    public int? QuotedAfterDays { get; init; }

    public int? DecidedAfterDays { get; init; }

    public int? PromisedAfterDays { get; init; }

    public required int StageSinceDaysAgo { get; init; }

    /// <summary>Why it came to nothing: declined, cancelled, or given up by the customer.</summary>
    public string? DeclineReason { get; init; }

    public int QuotedDaysAgo => ReceivedDaysAgo - (QuotedAfterDays ?? 0);

    public int DecidedDaysAgo => QuotedDaysAgo - (DecidedAfterDays ?? 0);

    /// <summary>A price was valid for so long that it has surely run out; weekends count as the Friday before.</summary>
    public const int RunOutDays = QuoteOffer.UsualDays + 3;

    public int RanOutDaysAgo => QuotedDaysAgo - RunOutDays;

    /// <summary>What the first cam passes.</summary>
    public IReadOnlyList<RouteStage> Route(Vendor? heatTreater) => First.Blank is { } blank ? Stages.RouteFor(blank, heatTreater) : Stages.RouteFor(First.Entry.Kind);

    /// <summary>When its blank was taken: with the acceptance, or for a job that has only just been put to work, the day it was.</summary>
    public int OpenedDaysAgo => At is Stage.Grind or Stage.RoughGrind ? StageSinceDaysAgo : DecidedDaysAgo;
}
