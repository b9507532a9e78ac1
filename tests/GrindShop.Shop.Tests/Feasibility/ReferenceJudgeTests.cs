using GrindShop.Lobes;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Tests.Feasibility;

public class ReferenceJudgeTests
{
    /// <summary>The slow judge measures true normal distances point by point.</summary>
    [Theory]
    [InlineData("RV8R-516-08")]
    [InlineData("RV8R-HI-02")]
    [InlineData("KV2N-515-02")]
    [InlineData("OV8D-516-04")]
    public void Whole_family_is_judged_as_the_slow_judge_judges_it(string wanted)
    {
        var grind = Shelf.Nominal(Shelf.Blank(wanted)) with { LobeSeparationCamDeg = 109, IntakeCenterlineCrankDeg = 104 };

        foreach (var fit in Shelf.Judge(grind).Blanks)
        {
            var blank = Shelf.Blank(fit.PartNumber);
            var limits = new BandLimits(Shelf.Rules.Settings.CleanupIn, blank.Part.CaseDepthIn, Shelf.Rules.LeastCaseIn(blank.Part.Hardening));
            var cap = blank.Part.EngineFamily.BoreLimitIn(Math.Max(grind.Intake.LobeLiftIn, grind.Exhaust.LobeLiftIn));
            var intake = MetalBand.Judge(blank.Intake, new(PolynomialLaw.Solve(grind.Intake), grind.Follower()), fit.IntakeTurnCamDeg, limits, null, cap);
            var exhaust = MetalBand.Judge(blank.Exhaust, new(PolynomialLaw.Solve(grind.Exhaust), grind.Follower()), -fit.ExhaustTurnCamDeg, limits, null, cap);

            Assert.Equal(intake.BaseCircleDiameterIn, fit.IntakeBaseCircleDiameterIn ?? 0, 3e-4);
            Assert.Equal(exhaust.BaseCircleDiameterIn, fit.ExhaustBaseCircleDiameterIn ?? 0, 3e-4);
            Assert.Equal(Math.Min(intake.MinRemovalIn, exhaust.MinRemovalIn), fit.MinRemovalIn ?? 0, 3e-4);
            Assert.Equal(Math.Max(intake.MaxRemovalIn, exhaust.MaxRemovalIn), fit.MaxRemovalIn ?? 0, 3e-4);
        }
    }
}
