using System.Globalization;
using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>
/// By how much each lobe of a cam is turned against the metal of its blank: by the timing, alike for all lobes of a kind, and by another firing order,
/// which moves the lobes of some cylinders by half the difference of their firing angles (derivation in docs/mathematics-mechanics.md, "A changed firing order").
/// </summary>
internal sealed class LobeTurns
{
    private const double SameCamDeg = 1e-6;

    private LobeTurns(Turns timing, IReadOnlyList<MovedLobe> moved, string? unknown) =>
        (Timing, Moved, Unknown) = (timing, moved, unknown);

    /// <summary>What the timing turns all lobes by.</summary>
    public Turns Timing { get; }

    /// <summary>The lobes that another firing order puts elsewhere; empty for the order the blank was cut for, and for a blank that is round.</summary>
    public IReadOnlyList<MovedLobe> Moved { get; }

    /// <summary>Why nobody can say where the lobes stand; null where that is known.</summary>
    public string? Unknown { get; }

    public static LobeTurns Of(GrindSpec grind, EngineFamily family, BlankPart part)
    {
        var timing = Turns.Of(grind, part.Nominal);
        if (part.Nominal is null || grind.FiringOrder == part.FiringOrder || family.SameSequence(grind.FiringOrder, part.FiringOrder))
            return new LobeTurns(timing, [], null);
        var change = EngineLayout.Change(family, grind, part.FiringOrder);
        return change.Succeeded ? new LobeTurns(timing, change.Value.Moved, null) : new LobeTurns(timing, [], change.Problem.ToString());
    }

    /// <summary>Every different turn of a kind of lobe as a turn of the metal, cam degrees, positive towards the closing side.</summary>
    public IReadOnlyList<double> Metal(ValveKind valve)
    {
        var timing = valve == ValveKind.Intake ? Timing.MetalIntakeCamDeg : Timing.MetalExhaustCamDeg;
        var moved = Moved.Where(lobe => lobe.Lobe.Valve == valve).ToList();
        // A nose farther ahead in the sense of rotation is nearer to the opening side.
        return Moved.Count == 0 ? [timing] : [.. moved.Select(lobe => timing - lobe.ShiftCamDeg).Append(timing).GroupBy(turn => Math.Round(turn / SameCamDeg)).Select(alike => alike.First())];
    }

    /// <summary>Which lobes stand elsewhere, and by how much; null where none does.</summary>
    public string? Words => Unknown is not null ? $"Where the lobes of this firing order stand cannot be worked out for this engine: {Unknown}"
        : Moved.Count == 0 ? null
        : $"The lobes of cylinder{(Cylinders.Count == 1 ? "" : "s")} {string.Join(", ", Cylinders)} stand up to {Moved.Max(lobe => Math.Abs(lobe.ShiftCamDeg)).ToString("0.#", CultureInfo.InvariantCulture)} cam degrees elsewhere than this blank's, and its metal does not let them turn that far.";

    private IReadOnlyList<int> Cylinders => [.. Moved.Select(lobe => lobe.Lobe.Cylinder).Distinct().Order()];
}
