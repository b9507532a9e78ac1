using System.Globalization;
using GrindShop.Shop.Planning;
using GrindShop.Shop.Specs;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Office;

public enum MapService
{
    FromStock,
    ToOrder,
    None,
}

/// <summary>A wish on the map and whether the shelf of this moment serves it.</summary>
public sealed record MapDot(ShelfDemand Demand, MapService Service, string? PartNumber)
{
    public double DurationCrankDeg => Demand.Grind.Intake.DurationAt050CrankDeg;

    public double SeparationCamDeg => Demand.Grind.LobeSeparationCamDeg;

    public string Words => string.Create(CultureInfo.InvariantCulture,
        $"{Demand.OrderNumber}: {DurationCrankDeg:0.#}/{Demand.Grind.Exhaust.DurationAt050CrankDeg:0.#} at .050, LSA {SeparationCamDeg:0.#}, {Demand.Grind.Lifter.Words()}, {ServiceWords}");

    public string ServiceWords => Service switch
    {
        MapService.FromStock => $"served from stock by {PartNumber}",
        MapService.ToOrder => $"only from {PartNumber}, which is not in stock",
        _ => "no blank serves it",
    };
}

/// <summary>A blank on the map with its letter.</summary>
public sealed record MapBlank(string Letter, BlankRegion Region, int Available)
{
    public string PartNumber => Region.Blank.Part.PartNumber;

    public string Words => string.Create(CultureInfo.InvariantCulture,
        $"{Letter}, {PartNumber}: {ShelfAdvice.Words(Region.Blank.Part)}; {(Available == 0 ? "none in stock" : $"{Available} in stock")}; {Reach}");

    public string Reach => Region.Steps.Count == 0
        ? "its own grind asks for more base circle than may be given up"
        : string.Create(CultureInfo.InvariantCulture,
            $"{Region.Steps[0].DurationAt050CrankDeg:0.#} to {Region.Steps[^1].DurationAt050CrankDeg:0.#} at .050, LSA up to {Region.Steps.Max(step => step.SeparationReachCamDeg):0.0} cam deg either way");
}

/// <summary>Regions and wishes laid out over intake duration and lobe separation.</summary>
public sealed class MapPicture
{
    /// <summary>Shown around the outermost marks; regions that reach farther are cut off there.</summary>
    private const double RoomCrankDeg = 4, RoomCamDeg = 2;

    public MapPicture(IReadOnlyList<MapBlank> blanks, IReadOnlyList<MapDot> dots)
    {
        (Blanks, Dots) = (blanks, dots);
        double[] durations = [.. dots.Select(dot => dot.DurationCrankDeg), .. blanks.Select(blank => blank.Region.Nominal.Intake.DurationAt050CrankDeg)];
        double[] separations = [.. dots.Select(dot => dot.SeparationCamDeg), .. blanks.Select(blank => blank.Region.Nominal.LobeSeparationCamDeg)];
        X = PlotFrame.Across(durations.DefaultIfEmpty(200).Min() - RoomCrankDeg, durations.DefaultIfEmpty(260).Max() + RoomCrankDeg);
        Y = PlotFrame.Up(separations.DefaultIfEmpty(106).Min() - RoomCamDeg, separations.DefaultIfEmpty(116).Max() + RoomCamDeg);
    }

    public IReadOnlyList<MapBlank> Blanks { get; }

    public IReadOnlyList<MapDot> Dots { get; }

    public PlotAxis X { get; }

    public PlotAxis Y { get; }

    /// <summary>Path data of a blank's region; empty where it has none.</summary>
    public string Outline(MapBlank blank)
    {
        var (steps, middle) = (blank.Region.Steps, blank.Region.Nominal.LobeSeparationCamDeg);
        return steps.Count == 0 ? "" : SvgPath.Closed(
            steps.Select(step => Place(step.DurationAt050CrankDeg, middle + step.SeparationReachCamDeg)).Concat(steps.Reverse().Select(step => Place(step.DurationAt050CrankDeg, middle - step.SeparationReachCamDeg))), 1);
    }

    public (double X, double Y) Place(double durationCrankDeg, double separationCamDeg) => (X.At(durationCrankDeg), -Y.At(separationCamDeg));

    public int Cams => Dots.Sum(dot => dot.Demand.Quantity);

    /// <summary>Cams wished for that no region of a blank in stock reaches: the holes in the shelf.</summary>
    public int InHoles => Dots.Where(dot => !Blanks.Any(blank => blank.Available > 0 && blank.Region.Holds(dot.DurationCrankDeg, dot.SeparationCamDeg))).Sum(dot => dot.Demand.Quantity);
}
