namespace GrindShop.Lobes;

/// <summary>Least and most metal between a finished lobe and its blank, in, with the polar angles (rad, on the finished lobe) where.</summary>
internal readonly record struct Removal(double MinIn, double MinAtRad, double MaxIn, double MaxAtRad, bool Undercut)
{
    /// <summary>Measured point by point along the finished surface, turned against the blank.</summary>
    public static Removal Between(BlankOutline blank, FinishLobe finish, double baseRadiusIn, double turnRad)
    {
        var surface = finish.Surface(baseRadiusIn, out var undercut);
        var (sin, cos) = Math.SinCos(turnRad);
        var depth = Array.ConvertAll(surface, p => blank.Body.Depth(p.X * cos - p.Y * sin, p.X * sin + p.Y * cos));
        int least = Array.IndexOf(depth, depth.Min()), most = Array.IndexOf(depth, depth.Max());
        return new(Peak(depth, least), Polar(surface[least]), Peak(depth, most), Polar(surface[most]), undercut);
    }

    private static double Polar((double X, double Y) p) => Math.Atan2(p.Y, p.X);

    /// <summary>Top of the parabola through a sample and its neighbours.</summary>
    private static double Peak(double[] values, int i)
    {
        double a = values[(i + values.Length - 1) % values.Length], b = values[i], c = values[(i + 1) % values.Length];
        var bend = a - 2 * b + c;
        return Math.Abs(bend) < 1e-12 ? b : b - (c - a) * (c - a) / (8 * bend);
    }
}
