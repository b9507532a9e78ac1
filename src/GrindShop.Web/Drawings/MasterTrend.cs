using System.Globalization;
using GrindShop.Lobes;

namespace GrindShop.Web.Drawings;

/// <summary>What one master gives on smaller and smaller base circles, with the wheel it was made for and with another one.</summary>
/// <param name="MadeAt">Base circle and wheel that the master was made for.</param>
/// <param name="CheckLiftsIn">Check lifts of the durations, in.</param>
/// <param name="SameWheel">Results with the master's own wheel, from the largest base circle down.</param>
/// <param name="OtherWheel">Results with the other wheel, on the same base circles.</param>
public sealed record MasterTrend(WheelSetting MadeAt, IReadOnlyList<double> CheckLiftsIn, IReadOnlyList<MasterResult> SameWheel, IReadOnlyList<MasterResult> OtherWheel)
{
    /// <summary>Each costs some milliseconds.</summary>
    public const int Settings = 7;

    /// <summary>Equal steps of the base circle from the largest down, each with one wheel and then the other.</summary>
    public static IEnumerable<WheelSetting> SettingsOf(double largestIn, double leastIn, double madeWheelIn, double otherWheelIn) =>
        from i in Enumerable.Range(0, Settings)
        let diameterIn = largestIn + (leastIn - largestIn) * i / (Settings - 1)
        from wheelIn in new[] { madeWheelIn, otherWheelIn }
        select new WheelSetting(diameterIn, wheelIn);

    public static MasterTrend Of(WheelSetting madeAt, IReadOnlyList<double> checkLiftsIn, IReadOnlyList<MasterResult> results) => new(
        madeAt, checkLiftsIn, [.. results.Where((_, i) => i % 2 == 0)], [.. results.Where((_, i) => i % 2 == 1)]);

    /// <summary>Every setting can be ground.</summary>
    public bool IsSound => SameWheel.Concat(OtherWheel).All(result => result.IsSound);

    /// <summary>Change of a duration against the one the master was made for, crank degrees.</summary>
    public double ChangeCrankDeg(MasterResult result, int check) => result.Durations[check].CrankDeg - SameWheel[0].Durations[check].CrankDeg;

    /// <summary>The drawing in words.</summary>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"The master was made on a base circle of {MadeAt.BaseCircleDiameterIn:0.000} in with a wheel of {MadeAt.WheelRadiusIn:0.0##} in radius. " +
        $"On {SameWheel[^1].GroundAt.BaseCircleDiameterIn:0.000} in the same wheel gives {Said(SameWheel[^1])}; a wheel of {OtherWheel[0].GroundAt.WheelRadiusIn:0.0##} in radius gives {Said(OtherWheel[0])} on the first base circle and {Said(OtherWheel[^1])} on the last.");

    private string Said(MasterResult result) => string.Join(" and ", result.Durations.Select((duration, check) => string.Create(
        CultureInfo.InvariantCulture, $"{duration.CrankDeg:0.00} crank degrees at {duration.AtIn:.000} in ({ChangeCrankDeg(result, check):+0.00;-0.00;0.00})")));
}
