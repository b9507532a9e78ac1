namespace GrindShop.Lobes;

/// <summary>How the follower moves over the lobe.</summary>
public enum FollowerMotion
{
    Rolling,

    /// <summary>Rolling with about 9 % sliding, as tested. A flat tappet slides far more: then the figure flatters.</summary>
    Sliding,
}

/// <summary>The published figure nearest to an alloy, and the pressure it stands for.</summary>
/// <param name="Factor">The row used.</param>
/// <param name="LoadStressPsi">Its K for the motion asked for.</param>
/// <param name="PeakPressurePsi">The peak pressure that K means between a steel roller and this alloy: <c>sqrt(K E* / pi)</c>.</param>
/// <param name="Remark">Which row stands in for the alloy, and why.</param>
public sealed record ContactAdvice(LoadStressFactor Factor, double LoadStressPsi, double PeakPressurePsi, string Remark)
{
    /// <summary>
    /// Advice for an alloy; null where nothing published comes near. No alloy of blanks was tested itself: every row stands in.
    /// </summary>
    public static ContactAdvice? For(CamAlloy alloy, FollowerMotion motion)
    {
        if (Row(alloy) is not var (factor, remark))
            return null;
        // The sliding figure is the lower one: where no rolling figure is known it errs on the safe side.
        var loadStress = motion == FollowerMotion.Rolling ? factor.RollingPsi ?? factor.SlidingPsi : factor.SlidingPsi;
        return loadStress is { } psi
            ? new(factor, psi, Stiffness.Pressure(psi, AgainstSteelRoller(alloy)), $"{factor.TestedMaterial} stands in: {remark}")
            : null;
    }

    /// <summary>Load of a contact as a share of the published figure; above 1 it did not last 1e8 cycles in the tests.</summary>
    public double ShareOf(LineContact contact) => contact.LoadStressPsi / LoadStressPsi;

    private static double AgainstSteelRoller(CamAlloy alloy)
    {
        var (roller, lobe) = (ElasticConstants.Steel, ElasticConstants.Of(alloy));
        return Stiffness.Of(roller.ModulusPsi, lobe.ModulusPsi, roller.Poisson, lobe.Poisson);
    }

    private static (LoadStressFactor Factor, string Remark)? Row(CamAlloy alloy) => alloy switch
    {
        CamAlloy.HardenableGrayIron => (LoadStressFactor.AustemperedGrayIron30, "no row for flame- or chill-hardened gray iron"),
        CamAlloy.AustemperedDuctileIron => (LoadStressFactor.NodularIron, "no row for austempered ductile iron"),
        CamAlloy.Sae1050 or CamAlloy.Sae1055 => (LoadStressFactor.Induction1340, "no row for 1050 or 1055"),
        CamAlloy.Sae5150 or CamAlloy.Sae5160 => (LoadStressFactor.Induction1340, "no row for 5150 or 5160; the lower induction row"),
        CamAlloy.Sae8660 => (LoadStressFactor.Induction4340, "no row for 8660; another nickel-chromium-molybdenum steel"),
        CamAlloy.Sae8620 => (LoadStressFactor.Carburized1020, "no row for 8620; another carburized steel"),
        _ => null,
    };
}
