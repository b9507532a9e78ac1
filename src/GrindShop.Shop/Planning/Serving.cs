namespace GrindShop.Shop.Planning;

public enum ServingKind
{
    /// <summary>A rule of the trade or the metal stands against it, and no change within the limits helps.</summary>
    Impossible,

    /// <summary>With another timing or duration that the customer would have to agree to.</summary>
    Changed,
    AsIs,
}

/// <summary>What a lobe has to give so that it comes out of a blank, crank degrees; and what metal it then costs, in.</summary>
/// <param name="CenterlineCrankDeg">Move of its centreline.</param>
/// <param name="DurationCrankDeg">Change of its duration at .050.</param>
/// <param name="BaseCircleDiameterIn">Base circle it is ground on.</param>
/// <param name="LeastRemovalIn">Least metal off.</param>
/// <param name="MostRemovalIn">Most metal off.</param>
public readonly record struct LobeServing(double CenterlineCrankDeg, double DurationCrankDeg, double BaseCircleDiameterIn, double LeastRemovalIn, double MostRemovalIn)
{
    public bool IsChanged => CenterlineCrankDeg != 0 || DurationCrankDeg != 0;
}

/// <summary>Serving one cam from one blank, and what it costs in the weights' dollars.</summary>
/// <param name="Kind">Possible as wished, with a change, or not.</param>
/// <param name="Intake">What the intake lobe gives.</param>
/// <param name="Exhaust">What the exhaust lobe gives.</param>
/// <param name="BaseCircleGivenUpIn">How far the smaller base circle ends below the family's usual one or what the engine leaves room for, in.</param>
/// <param name="CaseGivenUpIn">Case ground away where most comes off, in; 0 where the hardness has no end.</param>
/// <param name="GrindingMinutes">Estimated time to grind the metal off.</param>
/// <param name="Dollars">The sum.</param>
public readonly record struct Serving(
    ServingKind Kind, LobeServing Intake, LobeServing Exhaust, double BaseCircleGivenUpIn, double CaseGivenUpIn, double GrindingMinutes, double Dollars)
{
    /// <summary>Lobe separation given up, cam degrees.</summary>
    public double SeparationChangeCamDeg => (Intake.CenterlineCrankDeg + Exhaust.CenterlineCrankDeg) / 2;
}
