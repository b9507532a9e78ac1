using System.Diagnostics.CodeAnalysis;

namespace GrindShop.Lobes;

/// <summary>
/// The symmetric polynomial lobe of docs/mathematics.md, <c>s = L (1 + sum C_i x^n_i)</c>, whose half angle and exponent step are
/// solved so that the durations at two check lifts come out as specified.
/// </summary>
public sealed class PolynomialLaw : LiftLaw
{
    /// <summary>Range of the exponent step d.</summary>
    public const double LeastExponentStep = 0.8, MostExponentStep = 80;

    private readonly PolynomialShape shape;

    /// <param name="lobeLiftIn">Lobe lift, in.</param>
    /// <param name="halfAngleRad">Cam angle from nose to the end of the lift, rad, up to pi.</param>
    /// <param name="exponentStep">d, .8 to 80.</param>
    public PolynomialLaw(double lobeLiftIn, double halfAngleRad, double exponentStep)
    {
        LobeLiftIn = Require.Length(lobeLiftIn, nameof(lobeLiftIn));
        HalfAngleRad = Require.Within(halfAngleRad, 1e-3, Math.PI, nameof(halfAngleRad));
        ExponentStep = Require.Within(exponentStep, LeastExponentStep, MostExponentStep, nameof(exponentStep));
        shape = new(exponentStep);
    }

    public override double LobeLiftIn { get; }

    public double HalfAngleRad { get; }

    public double ExponentStep { get; }

    public override double SupportStartRad => -HalfAngleRad;

    public override double SupportEndRad => HalfAngleRad;

    public override LiftPoint At(double camRad)
    {
        var theta = AngleMath.Wrap(camRad);
        var x = Math.Abs(theta) / HalfAngleRad;
        if (!(x < 1))
            return LiftPoint.Dwell;
        var p = shape.At(x);
        var perRad = LobeLiftIn / HalfAngleRad;
        return new(LobeLiftIn * p.LiftIn, Math.Sign(theta) * perRad * p.VelocityInPerRad, perRad / HalfAngleRad * p.AccelerationInPerRad2);
    }

    /// <summary>The law of a specification, or why there is none.</summary>
    public static bool TrySolve(LobeSpec spec, [NotNullWhen(true)] out PolynomialLaw? law, [NotNullWhen(false)] out LiftLawError? error)
    {
        law = null;
        error = PolynomialSolver.Refuse(spec) ?? PolynomialSolver.Solve(spec, out law);
        return law is not null;
    }

    /// <inheritdoc cref="TrySolve"/>
    /// <exception cref="ArgumentException">The specification has no lift law; the message says why.</exception>
    public static PolynomialLaw Solve(LobeSpec spec) =>
        TrySolve(spec, out var law, out var error) ? law : throw new ArgumentException(error.Message, nameof(spec));
}
