using System.Globalization;
using System.Text;

namespace GrindShop.Web.Drawings;

/// <summary>Points as the data of an SVG path, with a fixed number of decimals and y turned upwards.</summary>
internal static class SvgPath
{
    public static string Closed(IEnumerable<(double X, double Y)> points, double scale) => Line(points, scale) + "Z";

    public static string Line(IEnumerable<(double X, double Y)> points, double scale)
    {
        var path = new StringBuilder();
        foreach (var (x, y) in points)
            path.Append(path.Length == 0 ? 'M' : 'L').AppendFormat(CultureInfo.InvariantCulture, "{0:0.##} {1:0.##}", x * scale, -y * scale);
        return path.ToString();
    }
}
