using System.Globalization;
using GrindShop.Lobes;
using GrindShop.Shop.Specs;
using GrindShop.Web.Drawings;
using GrindShop.Web.Public;

namespace GrindShop.Web.Api;

/// <summary>Which table of which lobe is asked for.</summary>
/// <param name="Kind">"wheel-centre" or "contour".</param>
/// <param name="Lobe">"intake" or "exhaust".</param>
/// <param name="StepCamDeg">Step, cam degrees.</param>
/// <param name="WheelRadiusIn">Radius of the grinding wheel, in.</param>
/// <param name="BaseCircleDiameterIn">Base circle, in.</param>
internal sealed record GrindingQuery(string Kind, string Lobe, double StepCamDeg, double WheelRadiusIn, double BaseCircleDiameterIn)
{
    /// <summary>Null where anything is missing or wrong; the problems say what.</summary>
    public static GrindingQuery? Read(IQueryCollection query, FieldProblems problems)
    {
        var kind = Choice(query, "table", ["wheel-centre", "contour"], problems);
        var lobe = Choice(query, "lobe", ["intake", "exhaust"], problems);
        var step = Number(query, "step", WheelRanges.Step, 1, problems);
        var wheel = Number(query, "wheelRadiusIn", WheelRanges.Radius, WheelRanges.UsualRadiusIn, problems);
        var baseCircle = Number(query, "baseCircleDiameterIn", WheelRanges.BaseCircle, null, problems);
        return problems.Any || kind is null || lobe is null ? null : new GrindingQuery(kind, lobe, step, wheel, baseCircle);
    }

    /// <summary>The table with a first line that says what it is for; null where the lobe cannot be ground like that.</summary>
    public string? Table(GrindSpec grind, FieldProblems problems)
    {
        var spec = Lobe == "intake" ? grind.Intake : grind.Exhaust;
        var (law, follower) = (PolynomialLaw.Solve(spec), grind.Follower());
        var contour = LobeContour.Of(law, follower, BaseCircleDiameterIn);
        if (contour.IsUndercut)
            problems.Add("baseCircleDiameterIn", "The lifter would undercut the lobe at this base circle; take a larger one.");
        else if (Kind == "wheel-centre" && !contour.WheelReaches(WheelRadiusIn))
            problems.Add("wheelRadiusIn", string.Create(CultureInfo.InvariantCulture, $"The wheel does not reach into the hollow flank: its radius must stay below {contour.MinConcaveRadiusIn:0.000} in."));
        if (problems.Any)
            return null;
        return Heading(spec, grind) + (Kind == "contour"
            ? GrindTable.Contour(law, follower, BaseCircleDiameterIn, StepCamDeg)
            : GrindTable.WheelCentre(law, follower, BaseCircleDiameterIn, WheelRadiusIn, StepCamDeg));
    }

    private string Heading(LobeSpec spec, GrindSpec grind) => string.Create(
        CultureInfo.InvariantCulture,
        $"# {Lobe} lobe: lift {spec.LobeLiftIn:0.0000} in; {spec.DurationAt050CrankDeg:0.##} crank deg at .050 in; {spec.AdvertisedDurationCrankDeg:0.##} at {spec.AdvertisedAtIn:0.000} in; " +
        $"{grind.Lifter.Words()} {grind.FollowerDiameterIn:0.000} in; base circle {BaseCircleDiameterIn:0.0000} in{(Kind == "contour" ? "" : $"; wheel radius {WheelRadiusIn:0.000} in")}. Verify on the machine.\n");

    private static string? Choice(IQueryCollection query, string key, string[] allowed, FieldProblems problems)
    {
        var given = query[key].ToString();
        if (given.Length == 0)
            return allowed[0];
        if (allowed.Contains(given))
            return given;
        problems.Add(key, $"{key} must be one of: {string.Join(", ", allowed)}.");
        return null;
    }

    private static double Number(IQueryCollection query, string key, FieldRange range, double? usual, FieldProblems problems)
    {
        var given = NumberText.TryRead(query[key].ToString(), out var value) ? value ?? usual : null;
        if (given is null || range.Check(given, key) is not null)
            problems.Add(key, range.Sentence);
        return given ?? range.Least;
    }
}
