using GrindShop.Lobes;
using PdfSharp.Drawing;

namespace GrindShop.Papers;

/// <summary>Lifter lift of both lobes over the crank, overlap top dead centre in the middle.</summary>
internal sealed class LiftDiagram(Sheet sheet, JobCam cam, XRect place)
{
    private const double SpanCrankDeg = 300, HeadRoom = 1.16;

    private static readonly XPen Thin = new(XColors.Black, .35), Line = new(XColors.Black, 1.2);
    private static readonly XPen Broken = new(XColors.Black, 1.2) { DashStyle = XDashStyle.Dash }, Dotted = new(XColors.Black, .5) { DashStyle = XDashStyle.Dot };

    private readonly double _mostIn = HeadRoom * Math.Max(cam.Grind.Intake.LobeLiftIn, cam.Grind.Exhaust.LobeLiftIn);

    public void Draw()
    {
        Frame();
        Lobe(Broken, cam.Grind.Exhaust, -cam.Grind.ExhaustCenterlineCrankDeg, "exhaust");
        Lobe(Line, cam.Grind.Intake, cam.Grind.IntakeCenterlineCrankDeg, "intake");
    }

    private void Frame()
    {
        foreach (var (crankDeg, name) in new[] { (-180.0, "BDC"), (0.0, "TDC"), (180.0, "BDC") })
        {
            sheet.Ink.DrawLine(Thin, At(crankDeg, 0), At(crankDeg, _mostIn));
            sheet.Text(At(crankDeg, 0).X, place.Bottom + 9, name, Weight.Regular, 7.5, Align.Centre);
        }
        for (var liftIn = .1; liftIn < _mostIn; liftIn += .1)
            sheet.Text(place.X - 3, At(0, liftIn).Y + 2.5, Figures.CheckLift(liftIn), Weight.Regular, 7, Align.Right);
        sheet.Ink.DrawLine(Thin, At(-SpanCrankDeg, 0), At(SpanCrankDeg, 0));
        sheet.Ink.DrawLine(Thin, At(-SpanCrankDeg, 0), At(-SpanCrankDeg, _mostIn));
        sheet.Ink.DrawLine(Dotted, At(-SpanCrankDeg, LobeSpec.UsualCheckLiftIn), At(SpanCrankDeg, LobeSpec.UsualCheckLiftIn));
        sheet.Text(place.Right, At(0, LobeSpec.UsualCheckLiftIn).Y - 2.5, ".050", Weight.Regular, 7, Align.Right);
    }

    private void Lobe(XPen pen, LobeSpec lobe, double centreCrankDeg, string name)
    {
        var law = PolynomialLaw.Solve(lobe);
        var degrees = Enumerable.Range(0, 301).Select(step => -SpanCrankDeg + 2 * step);
        var lifts = degrees.Select(crankDeg => (crankDeg, LiftIn: law.At(double.DegreesToRadians((crankDeg - centreCrankDeg) / 2)).LiftIn));
        sheet.Ink.DrawLines(pen, [.. lifts.Where(point => point.LiftIn > 0).Select(point => At(point.crankDeg, point.LiftIn))]);
        sheet.Text(At(centreCrankDeg, 0).X, At(0, lobe.LobeLiftIn).Y - 4, name, Weight.SemiBold, 8, Align.Centre);
    }

    private XPoint At(double crankDeg, double liftIn) =>
        new(place.X + (crankDeg + SpanCrankDeg) / (2 * SpanCrankDeg) * place.Width, place.Bottom - liftIn / _mostIn * place.Height);
}
