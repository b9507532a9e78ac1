using System.Globalization;

namespace GrindShop.Lobes;

/// <summary>A table brought to one turn: rising angles in radians, repeated ends joined, left-out base circle filled in.</summary>
internal sealed record TableTurn(double[] Angles, double[] Lifts, LiftLawError? Error = null)
{
    private const int LeastRows = 8;
    private const double SameAngleDeg = 1e-6, WidestStepDeg = 10, BaseCircleLiftIn = 0.003, LeastLiftIn = 0.01;

    public static TableTurn Of(IEnumerable<TablePoint> points)
    {
        var rows = points.ToList();
        if (rows.Exists(p => !(Math.Abs(p.CamDeg) <= 3600 && Math.Abs(p.LiftIn) <= 5)))
            return Refused("The table holds an angle or a lift that is not a sensible number.");
        var turn = rows.Select(p => p with { CamDeg = Turned(p.CamDeg) }).GroupBy(p => Math.Round(p.CamDeg / SameAngleDeg))
            .Select(g => new TablePoint(g.First().CamDeg, g.Average(p => p.LiftIn))).OrderBy(p => p.CamDeg).ToList();
        if (turn.Count < LeastRows)
            return Refused($"The table needs at least {LeastRows} different angles.");
        if (turn.Max(p => p.LiftIn) < LeastLiftIn)
            return Refused("The table shows no lobe: its greatest lift is below .010 in.");
        return Filled(turn);
    }

    private static double Turned(double deg)
    {
        var turned = (deg % 360 + 360) % 360;
        return 360 - turned < SameAngleDeg ? 0 : turned;
    }

    private static TableTurn Filled(List<TablePoint> turn)
    {
        var filled = new List<TablePoint>();
        for (var i = 0; i < turn.Count; i++)
        {
            TablePoint a = turn[i], b = i + 1 < turn.Count ? turn[i + 1] : turn[0] with { CamDeg = turn[0].CamDeg + 360 };
            filled.Add(a);
            var gap = b.CamDeg - a.CamDeg;
            if (gap > WidestStepDeg && Math.Max(Math.Abs(a.LiftIn), Math.Abs(b.LiftIn)) > BaseCircleLiftIn)
                return Refused(string.Create(
                    CultureInfo.InvariantCulture, $"The table leaves out {a.CamDeg:0.##} to {b.CamDeg % 360:0.##} cam degrees, where the lobe still has lift."));
            for (var k = 1; gap > WidestStepDeg && k < gap; k++)
                filled.Add(new(a.CamDeg + k, a.LiftIn + (b.LiftIn - a.LiftIn) * k / gap));
        }
        var ordered = filled.OrderBy(p => Turned(p.CamDeg)).ToList();
        return new([.. ordered.Select(p => Turned(p.CamDeg) * AngleMath.RadPerDeg)], [.. ordered.Select(p => p.LiftIn)]);
    }

    private static TableTurn Refused(string why) => new([], [], new(why));
}
