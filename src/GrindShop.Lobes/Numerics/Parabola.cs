namespace GrindShop.Lobes;

internal static class Parabola
{
    private const double FlatBend = 1e-13;

    /// <summary>Top of the parabola through three equally spaced values, as shift (in steps) and rise from the middle one.</summary>
    public static (double Shift, double Rise) Top(double before, double here, double after)
    {
        var bend = before - 2 * here + after;
        if (Math.Abs(bend) < FlatBend)
            return (0, 0);
        var shift = Math.Clamp((before - after) / (2 * bend), -1, 1);
        return (shift, shift * ((after - before) / 2 + shift * bend / 2));
    }
}
