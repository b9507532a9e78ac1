using System.Globalization;

namespace GrindShop.Web.Drawings;

/// <summary>The sheet that all plots share: its size in picture units and where its axes stand.</summary>
public static class PlotFrame
{
    /// <summary>The sheet as an SVG view box.</summary>
    public const string Sheet = "0 0 480 290";

    public const double Left = 76, Right = 466, Top = 34, Bottom = 236;

    public static PlotAxis Across(double least, double most, bool rounded = true) => new(least, most, Left, Right, rounded);

    public static PlotAxis Up(double least, double most) => new(least, most, Bottom, Top);

    /// <summary>Path data of a curve; it breaks where there is no value.</summary>
    public static string Curve(PlotAxis x, PlotAxis y, IEnumerable<(double X, double? Y)> points)
    {
        var (path, run) = ("", new List<(double, double)>());
        foreach (var point in points.Append((0, null)))
        {
            if (point.Y is { } value)
                run.Add((x.At(point.X), -y.At(value)));
            else
                (path, run) = (path + SvgPath.Line(run, 1), []);
        }
        return path;
    }

    /// <summary>A coordinate as SVG writes it.</summary>
    public static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
