namespace GrindShop.Lobes.Tests;

/// <summary>
/// Source of the values: a separate brute-force program (nearest distances from 1,500 points of the finished lobe to the chords of a
/// 12,000-point blank, the lift law summed term by term), which shares no code with the project. Its own error is about .000002 in.
/// </summary>
public class ReferenceTests
{
    private const double AllowedIn = 0.000005, AllowedDeg = 0.002;

    private static readonly BlankOutline FlatBlank = BlankOutline.Milled(Flat240(), Follower.Flat, 1.2, 0.040);

    public static TheoryData<string, string, double, double, double, double> Cases => new()
    {
        { "roller", "222 roller .375", 0, .005, 1.299999998, .006635802 },
        { "roller", "222 roller .375", 2, .005, 1.272856142, .033622438 },
        { "roller", "247 roller .375", 0, .005, 1.220007037, .044996480 },
        { "roller", "230 roller .375", -1.5, .010, 1.231804393, .039097802 },
        { "roller", "230 roller .35", 1, .005, 1.245750589, .032124686 },
        { "roller", "240 flat", 0, .005, 1.286388380, .067319743 },
        { "flat", "240 flat", 1.5, .005, 1.251536983, .023462875 },
        { "flat", "230 roller .375", 1, .005, 1.101848469, .093307356 },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Base_circle_and_removals(string blank, string finish, double turn, double cleanup, double maxBaseCircle, double maxRemoval)
    {
        var answer = MetalBand.Judge(Blank(blank), Finish(finish), turn, new(cleanup));

        Assert.Equal(maxBaseCircle, answer.MaxBaseCircleDiameterIn, 2 * AllowedIn);
        Assert.Equal(cleanup, answer.MinRemovalIn, AllowedIn);
        Assert.Equal(maxRemoval, answer.MaxRemovalIn, AllowedIn);
        Assert.True(answer.Fits);
    }

    [Theory]
    [InlineData("roller", "222 roller .375", 1.25, .005, 3.49829)]
    [InlineData("roller", "222 roller .375", 1.27, .005, 2.18711)]
    [InlineData("roller", "230 roller .375", 1.20, .010, 3.78736)]
    [InlineData("flat", "240 flat", 1.20, .005, 5.70156)]
    public void Allowed_turns(string blank, string finish, double baseCircle, double cleanup, double turn)
    {
        var range = GrindWindow.Turns(Blank(blank), Finish(finish), new(cleanup), baseCircle)!.Value;

        Assert.Equal(turn, range.MaxCamDeg, AllowedDeg);
        Assert.Equal(-turn, range.MinCamDeg, AllowedDeg);
    }

    internal static BlankOutline Blank(string name) => name == "flat" ? FlatBlank : Everyday.Blank;

    internal static FinishLobe Finish(string name) => name switch
    {
        "222 roller .375" => Everyday.Finish,
        "230 roller .35" => new(PolynomialLaw.Solve(new(0.360, 230, 282, 0.006)), Follower.Roller(0.35)),
        "230 roller .375" => new(PolynomialLaw.Solve(new(0.360, 230, 282, 0.006)), Everyday.Roller),
        "247 roller .375" => new(Everyday.Lobe(247), Everyday.Roller),
        _ => new(Flat240(), Follower.Flat),
    };

    private static PolynomialLaw Flat240() => PolynomialLaw.Solve(new(0.300, 240, 300, 0.006));
}
