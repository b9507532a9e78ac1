using System.Globalization;

namespace GrindShop.Web.Drawings;

/// <summary>One axis of a plot: values along a length of the picture, with round values marked.</summary>
public sealed class PlotAxis
{
    private readonly double _fromPx, _toPx;
    private readonly string _format;

    /// <param name="least">Least value shown.</param>
    /// <param name="most">Greatest value shown; equal or smaller is widened.</param>
    /// <param name="fromPx">Where the least value stands.</param>
    /// <param name="toPx">Where the greatest value stands.</param>
    /// <param name="rounded">Widen both ends to marked values.</param>
    public PlotAxis(double least, double most, double fromPx, double toPx, bool rounded = true)
    {
        (_fromPx, _toPx) = (fromPx, toPx);
        if (most - least < 1e-12)
            (least, most) = (least - .5, least + .5);
        var step = RoundStep((most - least) / 5);
        (From, To) = rounded ? (Math.Floor(least / step + 1e-9) * step, Math.Ceiling(most / step - 1e-9) * step) : (least, most);
        Marks = [.. Enumerable.Range(0, 1 + (int)Math.Floor((To - First(step)) / step + 1e-9)).Select(i => First(step) + i * step)];
        _format = "0." + new string('0', (int)Math.Clamp(-Math.Floor(Math.Log10(step) + 1e-9), 0, 8));
    }

    public double From { get; }

    public double To { get; }

    public IReadOnlyList<double> Marks { get; }

    /// <summary>Where a value stands in the picture.</summary>
    public double At(double value) => _fromPx + (value - From) / (To - From) * (_toPx - _fromPx);

    /// <summary>A marked value with as many decimals as the marks need.</summary>
    public string Say(double value) => (Math.Abs(value) < (To - From) * 1e-9 ? 0 : value).ToString(_format, CultureInfo.InvariantCulture);

    private double First(double step) => Math.Ceiling(From / step - 1e-9) * step;

    /// <summary>The next of 1, 2, 5, 10 ... from this size up.</summary>
    private static double RoundStep(double size)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(size)));
        return power * (size / power) switch { <= 1 + 1e-9 => 1, <= 2 + 1e-9 => 2, <= 5 + 1e-9 => 5, _ => 10 };
    }
}
