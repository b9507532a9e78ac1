using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Public;

/// <summary>A lobe to show on the first page: a milder cam than the one the blank was milled for, ground as large as its metal allows.</summary>
public static class HomeExample
{
    private const double LiftShare = .95, ShorterCrankDeg = 10, TurnCamDeg = 1.5;

    /// <summary>Null where the catalog has no milled blank yet.</summary>
    public static LobeSection? Of(CatalogContent content)
    {
        var shown = content.Blanks.Where(blank => blank.Part.Nominal is not null).OrderBy(blank => blank.Part.CaseDepthIn is null).FirstOrDefault();
        return shown?.Part.Nominal is { } nominal ? Section(shown, nominal, content.Rules.Settings.CleanupIn) : null;
    }

    private static LobeSection? Section(PreparedBlank blank, NominalGrind nominal, double cleanupIn)
    {
        var lobe = new FinishLobe(PolynomialLaw.Solve(Milder(nominal.Intake)), nominal.Follower);
        var metal = MetalBand.Judge(blank.Intake, lobe, TurnCamDeg, new BandLimits(cleanupIn));
        return metal.Fits ? LobeSection.Of("intake", blank.Intake, lobe, metal.BaseCircleDiameterIn, TurnCamDeg, blank.Part.CaseDepthIn) : null;
    }

    private static LobeSpec Milder(LobeSpec lobe) => lobe with
    {
        LobeLiftIn = lobe.LobeLiftIn * LiftShare,
        DurationAt050CrankDeg = lobe.DurationAt050CrankDeg - ShorterCrankDeg,
        AdvertisedDurationCrankDeg = lobe.AdvertisedDurationCrankDeg - ShorterCrankDeg,
    };
}
