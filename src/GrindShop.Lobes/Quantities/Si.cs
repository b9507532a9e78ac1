namespace GrindShop.Lobes;

/// <summary>SI figures and the inch-pound ones used here; exact by definition (inch 25.4 mm, pound .45359237 kg).</summary>
public static class Si
{
    public const double MillimetresPerInch = 25.4;
    public const double NewtonsPerPoundForce = 0.45359237 * 9.80665;
    public const double PascalsPerPsi = NewtonsPerPoundForce / (0.0254 * 0.0254);

    /// <summary>Standard gravity, in/s^2: turns a weight in lbf into a mass.</summary>
    public const double GravityInPerS2 = 9.80665 / 0.0254;

    public static double PsiFromMegapascals(double megapascals) => megapascals * 1e6 / PascalsPerPsi;

    public static double MegapascalsFromPsi(double psi) => psi * PascalsPerPsi / 1e6;

    public static double PsiFromGigapascals(double gigapascals) => PsiFromMegapascals(1000 * gigapascals);

    public static double InFromMillimetres(double millimetres) => millimetres / MillimetresPerInch;

    public static double LbfFromNewtons(double newtons) => newtons / NewtonsPerPoundForce;
}
