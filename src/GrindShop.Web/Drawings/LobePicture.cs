namespace GrindShop.Web.Drawings;

/// <summary>A point of a picture, in its own units: x to the right, y down.</summary>
public readonly record struct PicturePoint(double X, double Y);

/// <summary>How far lobes reach from the shaft axis, in; sections drawn with the same reach have the same scale.</summary>
public readonly record struct LobeReach(double UpIn, double DownIn, double SideIn)
{
    public static LobeReach Of(params IEnumerable<LobeSection> sections)
    {
        var points = sections.SelectMany(section => section.Blank.Concat(section.Finish)).ToList();
        return new LobeReach(points.Max(point => point.X), -points.Min(point => point.X), points.Max(point => Math.Abs(point.Y)));
    }
}

/// <summary>A section laid out for drawing: nose up, opening side left, closing side right.</summary>
public sealed class LobePicture(LobeSection section, LobeReach reach)
{
    public const double Width = 360;
    private const double TopRoom = 40, BottomRoom = 74, WidestHalf = 120, Tallest = 310;

    /// <summary>Picture units per inch.</summary>
    public double Scale { get; } = Math.Min(WidestHalf / reach.SideIn, Tallest / (reach.UpIn + reach.DownIn));

    public double Height => TopRoom + (reach.UpIn + reach.DownIn) * Scale + BottomRoom;

    public PicturePoint Axis => new(Width / 2, TopRoom + reach.UpIn * Scale);

    public double BaseRadius => section.BaseCircleDiameterIn / 2 * Scale;

    /// <summary>Where a point of the section, in inches, stands in the picture.</summary>
    public PicturePoint Place((double X, double Y) point) => new(Axis.X + point.Y * Scale, Axis.Y - point.X * Scale);

    /// <summary>The view box that shows the whole picture, or this many times enlarged, the part round a point of it.</summary>
    public string ViewBox(double zoom, PicturePoint round)
    {
        var (width, height) = (Width / zoom, Height / zoom);
        var (x, y) = (Math.Clamp(round.X - width / 2, 0, Width - width), Math.Clamp(round.Y - height / 2, 0, Height - height));
        return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{x:0.##} {y:0.##} {width:0.##} {height:0.##}");
    }

    public string Blank => Path(section.Blank);

    public string Finish => Path(section.Finish);

    public string? CaseEdge => section.CaseEdge.Count == 0 ? null : Path(section.CaseEdge);

    public PicturePoint OnBlank(double rad, double outward = 0) => Place(section.Blank, rad, outward);

    public PicturePoint OnFinish(double rad) => Place(section.Finish, rad, 0);

    /// <summary>Null where there is no case edge in that direction.</summary>
    public PicturePoint? OnCaseEdge(double rad) => section.CaseEdge.Count == 0 ? null : Place(section.CaseEdge, rad, 0);

    // SvgPath turns its second coordinate upwards: the lobe's x (nose) goes there.
    private string Path(IReadOnlyList<(double X, double Y)> points) => SvgPath.Closed(points.Select(point => (point.Y, point.X)), Scale);

    private PicturePoint Place(IReadOnlyList<(double X, double Y)> points, double rad, double outward)
    {
        var (sin, cos) = Math.SinCos(rad);
        var (x, y) = points.MaxBy(point => (point.X * cos + point.Y * sin) / Math.Sqrt(point.X * point.X + point.Y * point.Y));
        return new PicturePoint(Axis.X + y * Scale + outward * sin, Axis.Y - x * Scale - outward * cos);
    }
}
