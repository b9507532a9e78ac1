using BenchmarkDotNet.Attributes;
using GrindShop.Lobes;

namespace GrindShop.Benchmarks;

/// <summary>One specification against a catalogue of invented blanks: both lobes, both edges of the band, turns and removals.</summary>
[MemoryDiagnoser]
public class BandJudgeBenchmarks
{
    private readonly BandLimits limits = new(0.005, 0.25, 0.06);
    private TurnedBlank[] intake = [], exhaust = [];
    private BandAnswer[] answers = [];
    private BandJudge intakeJudge = null!, exhaustJudge = null!;

    [Params(1_000, 10_000)]
    public int Blanks { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        intakeJudge = new(new(Catalogue.Lobe(224, 0.335), Catalogue.Roller), limits);
        exhaustJudge = new(new(Catalogue.Lobe(230, 0.335), Catalogue.Roller), limits);
        (intake, exhaust) = (Catalogue.Blanks(Blanks, 1), Catalogue.Blanks(Blanks, 2));
        answers = new BandAnswer[Blanks];
        JudgeAll();
    }

    [Benchmark]
    public double JudgeAll()
    {
        intakeJudge.JudgeMany(intake, answers);
        var first = answers[0].MaxBaseCircleDiameterIn;
        exhaustJudge.JudgeMany(exhaust, answers);
        return first + answers[0].MaxBaseCircleDiameterIn;
    }
}
