using GrindShop.Lobes;
using GrindShop.Shop.Feasibility;
using PdfSharp.Drawing;

namespace GrindShop.Papers;

/// <summary>The finished intake lobe inside its blank, nose up, seen from the front of the cam; the metal that comes off is grey.</summary>
internal static class LobeDrawing
{
    private static readonly XColor Metal = XColor.FromGrayScale(.80);
    private static readonly XPen Thin = new(XColors.Black, .4), Thick = new(XColors.Black, 1.1), Dashed = new(XColors.Black, .5) { DashPattern = [6, 4] };

    /// <summary>Fills the given rectangle; nothing where the lobe does not come out of the blank.</summary>
    public static void Draw(Sheet sheet, JobCam cam, XRect place)
    {
        if (cam.Fit.IntakeBaseCircleDiameterIn is not { } baseCircleIn)
            return;
        var blank = PreparedBlank.Of(cam.Part).Intake.Points;
        var finished = LobeContour.Of(PolynomialLaw.Solve(cam.Grind.Intake), cam.Grind.Follower(), baseCircleIn, 720);
        var onPage = OnPage(blank, place, cam.Family.Rotation == Shop.Engines.CamRotation.Clockwise ? -1 : 1);
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(cam.Fit.IntakeTurnCamDeg));
        sheet.Ink.DrawPolygon(Thin, new XSolidBrush(Metal), [.. blank.Select(p => onPage(p.XIn, p.YIn))], XFillMode.Winding);
        sheet.Ink.DrawPolygon(Thick, XBrushes.White, [.. finished.Points.Select(p => onPage(p.XIn * cos - p.YIn * sin, p.XIn * sin + p.YIn * cos))], XFillMode.Winding);
        BaseCircle(sheet, onPage, baseCircleIn / 2);
    }

    /// <summary>The three kinds of line, one below the other; answers the y below.</summary>
    public static double Key(Sheet sheet, double x, double y)
    {
        sheet.Ink.DrawRectangle(Thin, new XSolidBrush(Metal), x, y, 16, 7);
        sheet.Text(x + 21, y + 6.5, "blank; grey comes off", Weight.Regular, 7.5);
        sheet.Ink.DrawLine(Thick, x, y + 14, x + 16, y + 14);
        sheet.Text(x + 21, y + 16.5, "finished lobe", Weight.Regular, 7.5);
        sheet.Ink.DrawLine(Dashed, x, y + 24, x + 16, y + 24);
        sheet.Text(x + 21, y + 26.5, "base circle", Weight.Regular, 7.5);
        return y + 32;
    }

    private static void BaseCircle(Sheet sheet, Func<double, double, XPoint> onPage, double radiusIn)
    {
        var (centre, rim) = (onPage(0, 0), onPage(radiusIn, 0));
        var radius = centre.Y - rim.Y;
        sheet.Ink.DrawEllipse(Dashed, centre.X - radius, centre.Y - radius, 2 * radius, 2 * radius);
        sheet.Ink.DrawLine(Thin, centre.X - 4, centre.Y, centre.X + 4, centre.Y);
        sheet.Ink.DrawLine(Thin, centre.X, centre.Y - 4, centre.X, centre.Y + 4);
    }

    /// <param name="closingSide">-1 where the closing flank lies left of the nose (a cam that turns clockwise), else 1.</param>
    private static Func<double, double, XPoint> OnPage(IReadOnlyList<OutlinePoint> blank, XRect place, int closingSide)
    {
        double top = blank.Max(p => p.XIn), bottom = blank.Min(p => p.XIn), half = blank.Max(p => Math.Abs(p.YIn));
        var scale = Math.Min(place.Height / (top - bottom), place.Width / (2 * half));
        var (centreX, centreY) = (place.X + place.Width / 2, place.Y + (place.Height - (top - bottom) * scale) / 2 + top * scale);
        return (xIn, yIn) => new XPoint(centreX + closingSide * yIn * scale, centreY - xIn * scale);
    }
}
