namespace GrindShop.Lobes;

/// <summary>Least and most metal between a finished lobe and its blank, in, with the cam angles (rad) of the follower where.</summary>
internal readonly record struct Removal(double MinIn, double MinAtRad, double MaxIn, double MaxAtRad, bool Undercut)
{
    /// <summary>Measured point by point along the finished surface, turned against the blank.</summary>
    public static Removal Between(BlankOutline blank, FinishLobe finish, double baseRadiusIn, double turnRad) =>
        Between(blank, finish.Surface(baseRadiusIn, out var undercut), turnRad) with { Undercut = undercut };

    /// <inheritdoc cref="Between(BlankOutline, FinishLobe, double, double)"/>
    public static Removal Between(BlankOutline blank, (double X, double Y)[] surface, double turnRad)
    {
        var (sin, cos) = Math.SinCos(turnRad);
        var depth = Array.ConvertAll(surface, p => blank.Body.Depth(p.X * cos - p.Y * sin, p.X * sin + p.Y * cos));
        int least = Array.IndexOf(depth, depth.Min()), most = Array.IndexOf(depth, depth.Max());
        return new(depth[least] + Peak(depth, least).Rise, At(depth, least), depth[most] + Peak(depth, most).Rise, At(depth, most), false);
    }

    private static double At(double[] depth, int i) => -Math.PI + (i + Peak(depth, i).Shift) * Math.Tau / depth.Length;

    /// <summary>Top of the parabola through a sample and its neighbours, against that sample.</summary>
    private static (double Shift, double Rise) Peak(double[] values, int i) =>
        Parabola.Top(values[(i + values.Length - 1) % values.Length], values[i], values[(i + 1) % values.Length]);
}
