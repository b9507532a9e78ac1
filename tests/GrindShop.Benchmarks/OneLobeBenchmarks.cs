using BenchmarkDotNet.Attributes;
using GrindShop.Lobes;

namespace GrindShop.Benchmarks;

/// <summary>The same question about one blank lobe, to .0003 in, by the quick judge, the plain one and a general polygon library.</summary>
[MemoryDiagnoser]
public class OneLobeBenchmarks
{
    private readonly BandLimits limits = new(0.005, 0.25, 0.06);
    private readonly BlankOutline blank = BlankOutline.Milled(Catalogue.Lobe(222, 0.335), Catalogue.Roller, 1.25, 0.040);
    private readonly FinishLobe finish = new(Catalogue.Lobe(230, 0.335), Catalogue.Roller);
    private readonly BandJudge quick;
    private readonly PolygonJudge polygons;

    public OneLobeBenchmarks()
    {
        quick = new(finish, limits);
        polygons = new(Catalogue.Lobe(222, 0.335), Catalogue.Roller, 1.25, 0.040, finish);
        if (Math.Abs(Quick() - NetTopologySuite()) > 2 * PolygonJudge.AccuracyIn)
            throw new InvalidOperationException("The judges disagree; comparing their speed would mean nothing.");
    }

    [Benchmark(Baseline = true)]
    public double Quick() => quick.Judge(blank, 1.2).MaxBaseCircleDiameterIn;

    [Benchmark]
    public double Plain() => MetalBand.Judge(blank, finish, 1.2, limits).MaxBaseCircleDiameterIn;

    [Benchmark]
    public double NetTopologySuite() => polygons.Judge(1.2, limits).MaxBaseCircleDiameterIn;
}
