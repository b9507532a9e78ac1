using System.Diagnostics.CodeAnalysis;

namespace GrindShop.Lobes;

/// <summary>
/// A lobe given by a table, a master's or a measured one, maybe asymmetric: a periodic cubic smoothing spline through it, turned so
/// that the greatest lift stands at 0.
/// </summary>
public sealed class TableLaw : LiftLaw
{
    private readonly PeriodicSpline spline;
    private readonly double noseRad;

    private TableLaw(PeriodicSpline spline, double noseRad, double toleranceIn)
    {
        (this.spline, this.noseRad, ToleranceIn) = (spline, noseRad, toleranceIn);
        LobeLiftIn = spline.At(noseRad).LiftIn;
    }

    public override double LobeLiftIn { get; }

    /// <summary>The table's own angle of the greatest lift, cam degrees, 0 to 360.</summary>
    public double NoseAtCamDeg => (noseRad / AngleMath.RadPerDeg % 360 + 360) % 360;

    /// <summary>Root-mean-square distance from the readings that was allowed, in.</summary>
    public double ToleranceIn { get; }

    /// <summary>Root-mean-square distance from the readings that was used, in.</summary>
    public double RmsDeviationIn => spline.RmsDeviation;

    public override double SupportStartRad => -Math.PI;

    public override double SupportEndRad => Math.PI;

    public override LiftPoint At(double camRad) => spline.At(camRad + noseRad);

    /// <summary>The law of a table, or why there is none. Rows may come in any order; a part left out must be base circle.</summary>
    /// <param name="points">At least 8 different angles of one turn.</param>
    /// <param name="toleranceIn">Root-mean-square distance from the readings to allow, 0 to .01 in; 0 goes through each.</param>
    /// <param name="law">The law, nose at 0.</param>
    /// <param name="error">Why there is none.</param>
    public static bool TryOf(
        IEnumerable<TablePoint> points, double toleranceIn, [NotNullWhen(true)] out TableLaw? law, [NotNullWhen(false)] out LiftLawError? error)
    {
        Require.Within(toleranceIn, 0, 0.01, nameof(toleranceIn));
        law = null;
        var turn = TableTurn.Of(points);
        error = turn.Error;
        if (error is not null)
            return false;
        var spline = new PeriodicSpline(turn.Angles, turn.Lifts, toleranceIn);
        law = new(spline, Nose(spline, turn), toleranceIn);
        return true;
    }

    /// <inheritdoc cref="TryOf"/>
    /// <exception cref="ArgumentException">The table makes no lobe; the message says why.</exception>
    public static TableLaw Of(IEnumerable<TablePoint> points, double toleranceIn) =>
        TryOf(points, toleranceIn, out var law, out var error) ? law : throw new ArgumentException(error.Message, nameof(points));

    private static double Nose(PeriodicSpline spline, TableTurn turn)
    {
        var smooth = Array.ConvertAll(turn.Angles, a => spline.At(a).LiftIn);
        var top = Array.IndexOf(smooth, smooth.Max());
        var n = turn.Angles.Length;
        var low = top > 0 ? turn.Angles[top - 1] : turn.Angles[n - 1] - Math.Tau;
        var high = top + 1 < n ? turn.Angles[top + 1] : turn.Angles[0] + Math.Tau;
        if (spline.At(low).VelocityInPerRad > 0 && spline.At(high).VelocityInPerRad < 0)
            return Root.InBracket(a => spline.At(a).VelocityInPerRad, low, high, 1e-13);
        return Root.Minimum(a => -spline.At(a).LiftIn, low, high).At;
    }
}
