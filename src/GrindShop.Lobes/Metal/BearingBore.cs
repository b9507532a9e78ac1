namespace GrindShop.Lobes;

/// <summary>A one-piece cam goes in endways: the nose must pass through the bearing bores.</summary>
public static class BearingBore
{
    /// <summary>Largest base circle whose nose still passes, <c>journal - 2 x lobe lift - clearance</c>, in; 0 when none does.</summary>
    public static double MaxBaseCircleDiameterIn(double journalDiameterIn, double lobeLiftIn, double clearanceIn) => Math.Max(
        0,
        Require.Length(journalDiameterIn, nameof(journalDiameterIn))
            - 2 * Require.Length(lobeLiftIn, nameof(lobeLiftIn))
            - Require.LengthOrZero(clearanceIn, nameof(clearanceIn)));
}
