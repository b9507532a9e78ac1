namespace GrindShop.Lobes;

/// <summary>A lobe that another firing order puts elsewhere.</summary>
/// <param name="Position">Place along the shaft, 1 at the front.</param>
/// <param name="Lobe">The cylinder and valve it works.</param>
/// <param name="OldCamDeg">From the datum as laid out, in the sense of rotation.</param>
/// <param name="NewCamDeg">The same in the other order.</param>
/// <param name="ShiftCamDeg">New less old by the shorter way, -180 to 180.</param>
public sealed record MovedLobe(int Position, LobePlace Lobe, double OldCamDeg, double NewCamDeg, double ShiftCamDeg);

/// <summary>Whether a blank can take another firing order than it was cut for.</summary>
public enum OrderVerdict
{
    /// <summary>No lobe moves: the blank serves both orders.</summary>
    SameLobes,

    /// <summary>Lobes move, but a full-round blank has metal all round.</summary>
    FullRoundTakesIt,

    /// <summary>Lobes move to where a milled blank has none: it takes a blank milled for that order, or a full-round one.</summary>
    NeedsBlankMilledForIt,
}

/// <summary>What another firing order does to a cam whose datum stays where it is.</summary>
public sealed record OrderChange(IReadOnlyList<MovedLobe> Moved)
{
    private const double ToleranceCamDeg = 1e-6;

    /// <summary>Common practice, no source: lobes move by tens of degrees, everyday stock allows two or three.</summary>
    public OrderVerdict On(bool fullRoundBlank)
    {
        if (Moved.Count == 0)
            return OrderVerdict.SameLobes;
        return fullRoundBlank ? OrderVerdict.FullRoundTakesIt : OrderVerdict.NeedsBlankMilledForIt;
    }

    /// <summary>Compares the cam with the one for the same crank throws fired in <paramref name="other"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="other"/> has another number of cylinders, or as <see cref="CamLayout.Of"/>.
    /// </exception>
    public static Outcome<OrderChange, CamLayoutProblem> Of(EngineBanks engine, CamShaft shaft, FiringOrder other)
    {
        var cylinders = engine.Firing.Order.Cylinders.Count;
        Require.Within(other.Cylinders.Count, cylinders, cylinders, nameof(other));
        var before = CamLayout.Of(engine, shaft);
        var after = CamLayout.Of(engine with { Firing = engine.Firing.With(other) }, shaft);
        if (!before.Succeeded || !after.Succeeded)
            return (before.Problem ?? after.Problem)!;
        return new OrderChange([.. before.Value.Rows.Zip(after.Value.Rows, Moves).Where(HasMoved)]);
    }

    private static MovedLobe Moves(LobeRow old, LobeRow now)
    {
        var shift = (CamDegrees.FromDegrees(now.FromDatumCamDeg) - CamDegrees.FromDegrees(old.FromDatumCamDeg)).ShorterWay();
        return new(old.Position, old.Lobe, old.FromDatumCamDeg, now.FromDatumCamDeg, shift.Value);
    }

    private static bool HasMoved(MovedLobe lobe) => Math.Abs(lobe.ShiftCamDeg) > ToleranceCamDeg;
}
