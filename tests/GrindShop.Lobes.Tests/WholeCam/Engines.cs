namespace GrindShop.Lobes.Tests;

/// <summary>Invented engines for the layout checks.</summary>
internal static class Engines
{
    internal static EngineBanks Eight(double evenBankAheadDeg, string order = "1-8-4-3-6-5-7-2") => new(
        FiringSchedule.EvenFire(FiringOrder.Parse(order, 8).Required()),
        [new("odd", 0, [1, 3, 5, 7]), new("even", evenBankAheadDeg, [2, 4, 6, 8])]);

    internal static EngineBanks InLine(string order, int cylinders) => new(
        FiringSchedule.EvenFire(FiringOrder.Parse(order, cylinders).Required()),
        [new("only", 0, [.. Enumerable.Range(1, cylinders)])]);

    internal static CamShaft Shaft(EngineBanks engine, double lsa = 110, double icl = 106) => new()
    {
        Turns = Rotation.Clockwise,
        Lobes = [.. engine.Firing.Order.Cylinders.Order().SelectMany(cylinder => Pair(cylinder))],
        LobeSeparationCamDeg = lsa,
        IntakeCenterlineCrankDeg = icl,
    };

    internal static double[] Intakes(this CamLayout layout, EngineBanks engine) =>
    [
        .. from cylinder in engine.Firing.Order.Cylinders
           select layout.Angle(cylinder, ValveKind.Intake),
    ];

    internal static double Angle(this CamLayout layout, int cylinder, ValveKind valve) =>
        layout.Rows.First(row => row.Lobe == new LobePlace(cylinder, valve)).FromDatumCamDeg;

    internal static double Turn(double fromCamDeg, double toCamDeg) => CamDegrees.FromDegrees(toCamDeg - fromCamDeg).Wrapped().Value;

    private static LobePlace[] Pair(int cylinder) => [new(cylinder, ValveKind.Intake), new(cylinder, ValveKind.Exhaust)];
}
