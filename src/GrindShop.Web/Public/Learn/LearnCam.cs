using GrindShop.Lobes;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Public.Learn;

/// <summary>The invented blank and engine that every explanation uses: a lobe-milled steel blank for a roller cam, all figures stated on the page.</summary>
public static class LearnCam
{
    public const double LiftIn = .340, DurationAt050CrankDeg = 222, AdvertisedOverCrankDeg = 56, BaseCircleIn = 1.080, StockIn = .030, CastStockIn = .075;
    public const double JournalIn = 1.900, NoseClearanceIn = .010, LeastBaseCircleIn = .900, BarIn = 1.880;

    public static readonly CamPhase Phase = new(112, 108);

    public static readonly Follower Roller = Follower.Roller(.375);

    private static readonly LiftLaw Nominal = Law(LiftIn, DurationAt050CrankDeg);

    public static readonly BlankOutline Milled = BlankOutline.Milled(Nominal, Roller, BaseCircleIn, StockIn);

    public static readonly BlankOutline Cast = BlankOutline.Milled(Nominal, Roller, BaseCircleIn, CastStockIn);

    public static readonly BlankOutline Bar = BlankOutline.Round(BarIn);

    /// <summary>A lobe of this lift, in, and duration at .050 in, crank degrees.</summary>
    public static FinishLobe Lobe(double liftIn, double at050CrankDeg) => new(Law(liftIn, at050CrankDeg), Roller);

    /// <summary>The law of such a lobe, opened and closed as gently as the blank's own.</summary>
    public static LiftLaw Law(double liftIn, double at050CrankDeg) =>
        PolynomialLaw.Solve(new LobeSpec(liftIn, at050CrankDeg, at050CrankDeg + AdvertisedOverCrankDeg, .006));

    /// <summary>Largest base circle whose nose passes the bearing bores, in.</summary>
    public static double BoreLimitIn(double liftIn) => BearingBore.MaxBaseCircleDiameterIn(JournalIn, liftIn, NoseClearanceIn);

    /// <summary>The lobe in a blank on the largest base circle that cleans up and passes the bores, less what the reader takes off further; never below the least.</summary>
    /// <param name="mostIn">No larger base circle than this, in.</param>
    public static LobeSection Section(BlankOutline blank, FinishLobe lobe, double cleanupIn, double smallerByIn = 0, double? caseIn = null, double mostIn = double.MaxValue)
    {
        var mayIn = Math.Min(BoreLimitIn(lobe.Law.LobeLiftIn), mostIn);
        var largest = MetalBand.Judge(blank, lobe, 0, new BandLimits(cleanupIn), largestBaseCircleDiameterIn: mayIn).BaseCircleDiameterIn;
        return LobeSection.Of("intake", blank, lobe, Math.Max(largest - smallerByIn, LeastBaseCircleIn), 0, caseIn);
    }
}
