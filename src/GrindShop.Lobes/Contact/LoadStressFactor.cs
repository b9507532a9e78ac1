namespace GrindShop.Lobes;

/// <summary>
/// A published load-stress factor K, psi: the greatest <c>F / (w R)</c> that lasted 1e8 cycles against a tool-steel roller of 60-62 HRC.
/// Talbourdet and Morrison's tests as tabulated in R. L. Norton, Machine Design (from memory).
/// </summary>
/// <param name="TestedMaterial">What was tested.</param>
/// <param name="RollingPsi">Pure rolling; null where no figure is known.</param>
/// <param name="SlidingPsi">Rolling with 9 % sliding; null where no figure is known.</param>
public sealed record LoadStressFactor(string TestedMaterial, double? RollingPsi, double? SlidingPsi)
{
    public static Source Source { get; } = new(
        SourceKind.Memory, "Talbourdet and Morrison, as tabulated in Norton, Machine Design; 1e8 cycles, tool-steel roller 60-62 HRC");

    public static LoadStressFactor GrayIron30 { get; } = new("gray iron class 30", 1120, null);

    public static LoadStressFactor AustemperedGrayIron30 { get; } = new("gray iron class 30, austempered", 2920, 2510);

    public static LoadStressFactor NodularIron { get; } = new("nodular iron 100-70-03", null, 3570);

    public static LoadStressFactor Carburized1020 { get; } = new("1020 steel, carburized", 12_700, 10_400);

    public static LoadStressFactor Induction1340 { get; } = new("X1340 steel, induction hardened", 10_000, 8_200);

    public static LoadStressFactor Induction4340 { get; } = new("4340 steel, induction hardened", 13_000, 9_000);
}
