using System.Globalization;
using GrindShop.Lobes;
using GrindShop.Shop.Engines;

namespace GrindShop.Shop.Specs;

/// <summary>
/// The lobe angles of a cam in its engine family. The left bank is the one on the left of a person who sits behind the engine: seen from
/// the front, clockwise ahead of the right bank.
/// </summary>
public static class EngineLayout
{
    private const int LeftBank = 0;

    /// <param name="family">The engine.</param>
    /// <param name="grind">The cam; its firing order names the family's cylinders, as <see cref="SpecCheck"/> sees to.</param>
    /// <returns>The lobes front to rear with their angles from the datum, or what is wrong with the family's figures.</returns>
    public static Outcome<CamLayout, CamLayoutProblem> Of(EngineFamily family, GrindSpec grind)
    {
        var firing = Firing(family, grind.FiringOrder);
        return firing.Succeeded ? CamLayout.Of(new EngineBanks(firing.Value, Banks(family)), Shaft(family, grind)) : firing.Problem;
    }

    /// <summary>Where the firing order of a cam puts lobes that were cut for another order, the datum where it is.</summary>
    /// <param name="family">The engine.</param>
    /// <param name="grind">The cam that is wanted.</param>
    /// <param name="cutFor">The firing order that the lobes were cut for.</param>
    public static Outcome<OrderChange, CamLayoutProblem> Change(EngineFamily family, GrindSpec grind, string cutFor)
    {
        var firing = Firing(family, cutFor);
        if (!firing.Succeeded)
            return firing.Problem;
        var wanted = FiringOrder.Of(FromCylinderOne(family, grind.FiringOrder, out _), family.Cylinders).Required();
        return OrderChange.Of(new EngineBanks(firing.Value, Banks(family)), Shaft(family, grind), wanted);
    }

    /// <summary>The crank throws stay what they are: another order fires its cylinders at the family's intervals.</summary>
    private static Outcome<FiringSchedule, CamLayoutProblem> Firing(EngineFamily family, string order)
    {
        var firing = FiringOrder.Of(FromCylinderOne(family, order, out _), family.Cylinders).Required();
        if (family.FiringIntervalsCrankDeg is not { Length: > 0 } intervals)
            return FiringSchedule.EvenFire(firing);
        FromCylinderOne(family, family.FiringOrder, out var shift);
        return FiringSchedule.OddFire(firing, [.. intervals.Skip(shift), .. intervals.Take(shift)]);
    }

    /// <summary>The family's datum is read with cylinder 1 at overlap, so every order starts there.</summary>
    private static int[] FromCylinderOne(EngineFamily family, string text, out int shift)
    {
        var order = FiringOrder.Parse(text, family.Cylinders).Required().Cylinders;
        shift = order.TakeWhile(cylinder => cylinder != 1).Count();
        return [.. order.Skip(shift), .. order.Take(shift)];
    }

    private static IReadOnlyList<Bank> Banks(EngineFamily family) =>
    [
        .. from cylinder in Enumerable.Range(1, family.Cylinders)
           group cylinder by BankOf(family, cylinder) into bank
           select new Bank(Name(bank.Key), AxisClockwiseDeg(family, bank.Key), [.. bank]),
    ];

    private static CamShaft Shaft(EngineFamily family, GrindSpec grind)
    {
        var turns = family.Rotation == CamRotation.Clockwise ? Rotation.Clockwise : Rotation.CounterClockwise;
        var datum = turns == Rotation.Clockwise ? family.DatumAngleCamDeg : -family.DatumAngleCamDeg;
        var bank = family.HasSides && grind.Side is { } side ? (int?)side : null;
        return new CamShaft
        {
            Turns = turns,
            WorkHeadTurns = turns,
            Lobes = [.. Lobes(family.ValveOrder).Where(lobe => bank is null || BankOf(family, lobe.Cylinder) == bank)],
            LobeSeparationCamDeg = grind.LobeSeparationCamDeg,
            IntakeCenterlineCrankDeg = grind.IntakeCenterlineCrankDeg,
            DatumClockwiseDeg = AxisClockwiseDeg(family, BankOf(family, 1)) + datum,
            OnlyBank = bank is { } only ? Name(only) : null,
        };
    }

    private static IEnumerable<LobePlace> Lobes(string valveOrder) =>
        from word in valveOrder.Split(' ', StringSplitOptions.RemoveEmptyEntries)
        select new LobePlace(int.Parse(word[..^1], CultureInfo.InvariantCulture), word[^1] == 'I' ? ValveKind.Intake : ValveKind.Exhaust);

    private static int BankOf(EngineFamily family, int cylinder) => family.BankOfCylinder.ElementAtOrDefault(cylinder - 1);

    private static double AxisClockwiseDeg(EngineFamily family, int bank) =>
        bank == LeftBank ? family.LifterBankAngleDeg / 2 : -family.LifterBankAngleDeg / 2;

    private static string Name(int bank) => bank == LeftBank ? "left" : "right";
}
