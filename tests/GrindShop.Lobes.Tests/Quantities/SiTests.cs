namespace GrindShop.Lobes.Tests;

// NIST Special Publication 811, appendix B (memory): 1 psi = 6.894757 kPa, 1 lbf = 4.448222 N.
public class SiTests
{
    [Fact]
    public void Published_factors()
    {
        Assert.Equal(6894.757, Si.PascalsPerPsi, 5e-4);
        Assert.Equal(4.448222, Si.NewtonsPerPoundForce, 5e-7);
        Assert.Equal(386.0886, Si.GravityInPerS2, 5e-5);
    }

    [Fact]
    public void There_and_back() => Assert.Equal(1447.04, Si.MegapascalsFromPsi(Si.PsiFromGigapascals(1.44704)), 1e-9);
}
