using System.Globalization;
using GrindShop.Lobes;

namespace GrindShop.Web.Drawings;

/// <summary>Contact pressure round a lobe, laid out for drawing, with the level published for its alloy where there is one.</summary>
public sealed class ContactCurve
{
    private const double PsiPerKsi = 1000;
    private readonly ContactProfile _profile;

    public ContactCurve(ContactProfile profile, ContactAdvice? advice)
    {
        (_profile, Advice) = (profile, advice);
        X = PlotFrame.Across(-180, 180, rounded: false);
        Y = PlotFrame.Up(0, Math.Max(PeakKsi ?? 0, LevelKsi ?? 0) * 1.05);
        Path = PlotFrame.Curve(X, Y, profile.Rows.Select(row => (row.CamDeg, Ksi(row))));
    }

    public PlotAxis X { get; }

    public PlotAxis Y { get; }

    /// <summary>Path data; it breaks where the follower has left the lobe.</summary>
    public string Path { get; }

    public ContactAdvice? Advice { get; }

    /// <summary>Greatest pressure, thousands of psi; null where there is no contact at all.</summary>
    public double? PeakKsi => _profile.Peak is { } peak ? Ksi(peak) : null;

    /// <summary>Where the greatest pressure is, cam degrees from the nose.</summary>
    public double PeakAtCamDeg => _profile.Peak?.CamDeg ?? 0;

    /// <summary>Pressure of the published level, thousands of psi.</summary>
    public double? LevelKsi => Advice?.PeakPressurePsi / PsiPerKsi;

    public bool IsAbove => PeakKsi > LevelKsi;

    /// <summary>Where the follower leaves the lobe, cam degrees from the nose; null where it never does.</summary>
    public (double From, double To)? LostCamDeg =>
        _profile.Rows.Where(row => row.Contact.Problem is ContactProblem.ContactLost).Select(row => row.CamDeg).ToList() is { Count: > 0 } lost ? (lost[0], lost[^1]) : null;

    /// <summary>The drawing in words.</summary>
    public string Description => string.Join(' ', Sentences());

    private static double? Ksi(ContactRow row) => row.Contact.Value?.PeakPressurePsi / PsiPerKsi;

    private IEnumerable<string> Sentences()
    {
        if (PeakKsi is { } peak)
            yield return string.Create(CultureInfo.InvariantCulture, $"The greatest contact pressure is {peak:0} thousand psi, at {PeakAtCamDeg:0} cam degrees from the nose.");
        if (LevelKsi is { } level)
            yield return string.Create(CultureInfo.InvariantCulture, $"The published level that stands in for this alloy is {level:0} thousand psi; the lobe is {(IsAbove ? "above" : "below")} it.");
        if (LostCamDeg is { } lost)
            yield return string.Create(CultureInfo.InvariantCulture, $"Between {lost.From:0} and {lost.To:0} cam degrees the follower leaves the lobe: the spring does not hold it at this speed.");
    }
}
