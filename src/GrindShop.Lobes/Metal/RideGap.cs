using System.Numerics;
using System.Runtime.InteropServices;

namespace GrindShop.Lobes;

/// <summary>
/// A blank's ride path against a finished lobe's lift, turned: two passes over the grid find where the extremes lie (single
/// precision, several directions at once), a few points around them give the figures (double precision).
/// </summary>
internal readonly ref struct RideGap
{
    private const int MostWalked = 20;
    private readonly RidePath path;
    private readonly RideLift lift;
    private readonly int whole;
    private readonly double share;

    public RideGap(RidePath path, RideLift lift, double turnRad)
    {
        (this.path, this.lift) = (path, lift);
        var steps = turnRad / RidePath.StepRad;
        steps -= RidePath.Count * Math.Floor(steps / RidePath.Count);
        whole = (int)steps % RidePath.Count;
        share = steps - Math.Floor(steps);
    }

    /// <summary>Largest base radius, in, with a distance of at least the clean-up all round, and the cam angle where it is reached.</summary>
    public (double BaseRadiusIn, double AtRad) MaxBase(double cleanupIn)
    {
        var i = TightestAt((float)cleanupIn);
        double before = Room(i - 1, cleanupIn), here = Room(i, cleanupIn), after = Room(i + 1, cleanupIn);
        var (shift, rise) = Parabola.Top(before, here, after);
        return (here + rise - path.Follower.RadiusIn, CamRad(i + shift));
    }

    /// <summary>Least and most distance at a base radius.</summary>
    public Removal Removal(double baseRadiusIn)
    {
        var onBase = baseRadiusIn + path.Follower.RadiusIn;
        var (least, most) = ExtremesAt((float)onBase);
        var (minAt, min) = Highest(least, -1, onBase);
        var (maxAt, max) = Highest(most, 1, onBase);
        return new(-min, minAt, max, maxAt, false);
    }

    /// <summary>From the direction the pass has found, up to the top of the true distance.</summary>
    private (double AtRad, double Signed) Highest(int i, int sign, double onBase)
    {
        double before = sign * Distance(i - 1, onBase), here = sign * Distance(i, onBase), after = sign * Distance(i + 1, onBase);
        for (var walked = 0; walked < MostWalked && Math.Max(before, after) > here; walked++)
        {
            if (after > before)
                (i, before, here, after) = (i + 1, here, after, sign * Distance(i + 2, onBase));
            else
                (i, before, here, after) = (i - 1, sign * Distance(i - 2, onBase), before, here);
        }
        var (shift, rise) = Parabola.Top(before, here, after);
        return (CamRad(i + shift), here + rise);
    }

    private double CamRad(double i) => -Math.PI + (i - whole - share) * RidePath.StepRad;

    private double Lift(int i) => lift.Between(RidePath.Wrapped(RidePath.Wrapped(i) - whole - 1), 1 - share);

    private double Distance(int i, double onBase) => path.Distance(RidePath.Wrapped(i), onBase + Lift(i));

    private double Room(int i, double cleanupIn)
    {
        var k = RidePath.Wrapped(i);
        double cosine = path.Cosine[k], inward = cleanupIn / cosine;
        return path.Radius[k] - inward - path.Bend[k] / cosine * inward * inward - Lift(i);
    }

    private int TightestAt(float cleanup)
    {
        var scan = new Scan(path, lift, whole, (float)share);
        var best = new Vector<float>(float.MaxValue);
        Vector<int> at = default, index = Scan.FirstIndex;
        for (var i = 0; i < RidePath.Count; i += Vector<float>.Count, index += Scan.IndexStep)
        {
            var room = scan.Room(i, cleanup);
            at = Vector.ConditionalSelect(Vector.LessThan(room, best), index, at);
            best = Vector.Min(room, best);
        }
        return Scan.IndexOfLeast(best, at);
    }

    private (int Least, int Most) ExtremesAt(float onBase)
    {
        var scan = new Scan(path, lift, whole, (float)share);
        Vector<float> least = new(float.MaxValue), most = new(float.MinValue);
        Vector<int> leastAt = default, mostAt = default, index = Scan.FirstIndex;
        for (var i = 0; i < RidePath.Count; i += Vector<float>.Count, index += Scan.IndexStep)
        {
            var distance = scan.Distance(i, onBase);
            leastAt = Vector.ConditionalSelect(Vector.LessThan(distance, least), index, leastAt);
            mostAt = Vector.ConditionalSelect(Vector.GreaterThan(distance, most), index, mostAt);
            (least, most) = (Vector.Min(distance, least), Vector.Max(distance, most));
        }
        return (Scan.IndexOfLeast(least, leastAt), Scan.IndexOfLeast(-most, mostAt));
    }

    /// <summary>The vector loads of both passes.</summary>
    private readonly ref struct Scan(RidePath path, RideLift lift, int whole, float share)
    {
        private readonly ref float radius = ref MemoryMarshal.GetArrayDataReference(path.Radius);
        private readonly ref float cosine = ref MemoryMarshal.GetArrayDataReference(path.Cosine);
        private readonly ref float bend = ref MemoryMarshal.GetArrayDataReference(path.Bend);
        private readonly ref float lifts = ref lift.Twice[RidePath.Count - whole - 1];
        private readonly Vector<float> share = new(share);

        public static Vector<int> FirstIndex { get; } = Vector<int>.Indices;

        public static Vector<int> IndexStep { get; } = new(Vector<float>.Count);

        public Vector<float> Room(int i, float cleanup)
        {
            var cosines = Vector.LoadUnsafe(ref cosine, (nuint)i);
            var inward = new Vector<float>(cleanup) / cosines;
            return Gap(i) - inward - Vector.LoadUnsafe(ref bend, (nuint)i) * inward * inward;
        }

        public Vector<float> Distance(int i, float onBase)
        {
            var gap = Gap(i) - new Vector<float>(onBase);
            return gap * (Vector.LoadUnsafe(ref cosine, (nuint)i) - gap * Vector.LoadUnsafe(ref bend, (nuint)i));
        }

        public static int IndexOfLeast(Vector<float> values, Vector<int> at)
        {
            var k = 0;
            for (var lane = 1; lane < Vector<float>.Count; lane++)
                if (values[lane] < values[k])
                    k = lane;
            return at[k];
        }

        private Vector<float> Gap(int i)
        {
            Vector<float> behind = Vector.LoadUnsafe(ref lifts, (nuint)i), ahead = Vector.LoadUnsafe(ref lifts, (nuint)i + 1);
            return Vector.LoadUnsafe(ref radius, (nuint)i) - ahead - share * (behind - ahead);
        }
    }
}
