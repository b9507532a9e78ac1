namespace GrindShop.Lobes;

/// <summary>A bank and the line along which its followers move.</summary>
/// <param name="Name">The shop's own word for it, such as "left".</param>
/// <param name="LifterAxisClockwiseDeg">
/// Angle of the lifter axis about the cam, clockwise seen from the front, from any reference common to all banks and the datum.
/// </param>
/// <param name="Cylinders">The cylinders that stand in it.</param>
public sealed record Bank(string Name, double LifterAxisClockwiseDeg, IReadOnlyList<int> Cylinders);

/// <summary>The engine as far as its cams are concerned.</summary>
public sealed record EngineBanks(FiringSchedule Firing, IReadOnlyList<Bank> Banks)
{
    /// <summary>The bank of a cylinder. Call only on an engine that <see cref="Problem"/> finds nothing wrong with.</summary>
    internal Bank BankOf(int cylinder) => Banks.First(bank => bank.Cylinders.Contains(cylinder));

    /// <exception cref="ArgumentOutOfRangeException">A lifter axis is outside -360 to 360.</exception>
    internal CamLayoutProblem? Problem()
    {
        foreach (var bank in Banks)
            Require.Within(bank.LifterAxisClockwiseDeg, -360, 360);
        var housed = Banks.SelectMany(bank => bank.Cylinders).ToList();
        if (housed.Except(Firing.Order.Cylinders).ToList() is [var unknown, ..])
            return new CamLayoutProblem.UnknownCylinder(unknown);
        foreach (var cylinder in Firing.Order.Cylinders)
            if (housed.Count(other => other == cylinder) is var times and not 1)
                return new CamLayoutProblem.NotInOneBank(cylinder, times);
        return null;
    }
}
