using System.Text.RegularExpressions;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Demo;

/// <summary>Is an engine family of the scenario one that can exist?</summary>
internal static partial class EngineCheck
{
    private const string File = "engines.json";

    public static void Check(SeedFolder folder, IEnumerable<EngineFamily> families)
    {
        foreach (var family in families)
            foreach (var (field, message) in Problems(family))
                folder.Wrong(File, family.Code, field, message);
    }

    private static IEnumerable<(string Field, string Message)> Problems(EngineFamily family) =>
        [.. Firing(family), .. Banks(family), .. Lobes(family), .. Sizes(family)];

    private static IEnumerable<(string, string)> Firing(EngineFamily family)
    {
        if (!family.IsFiringOrder(family.FiringOrder))
            yield return ("firingOrder", $"Every cylinder from 1 to {family.Cylinders} must stand in it once.");
        if (family.OtherFiringOrders.Any(order => !family.IsFiringOrder(order) || family.SameSequence(order, family.FiringOrder)))
            yield return ("otherFiringOrders", "Each must name every cylinder once and differ from the usual order.");
        var intervals = family.FiringIntervalsCrankDeg;
        if (intervals.Length > 0 && (intervals.Length != family.Cylinders || Math.Abs(intervals.Sum() - 720) > 1e-6 || intervals.Any(interval => interval < 0)))
            yield return ("firingIntervalsCrankDeg", $"Give {family.Cylinders} intervals that add up to 720, or none for an even fire.");
    }

    private static IEnumerable<(string, string)> Banks(EngineFamily family)
    {
        var isV = family.Kind is EngineKind.PushrodV or EngineKind.OverheadCamV;
        if (family.BankOfCylinder.Length != family.Cylinders || family.BankOfCylinder.Any(bank => bank != 0 && (bank != 1 || !isV)))
            yield return ("bankOfCylinder", $"Give {family.Cylinders} banks, 0 or 1; an in-line engine has bank 0 only.");
        if (isV != family.BankAngleDeg > 0)
            yield return ("bankAngleDeg", "A V engine has an angle between its banks, an in-line engine has 0.");
        if (family.HasSides && family.Kind != EngineKind.OverheadCamV)
            yield return ("hasSides", "Only an overhead-cam V engine has a left and a right cam.");
    }

    private static IEnumerable<(string, string)> Lobes(EngineFamily family)
    {
        var lobes = family.ValveOrder.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var all = Enumerable.Range(1, family.Cylinders).SelectMany(cylinder => new[] { $"{cylinder}E", $"{cylinder}I" });
        if (!lobes.All(lobe => LobeName().IsMatch(lobe)) || !lobes.Order().SequenceEqual(all.Order()))
            yield return ("valveOrder", "Every cylinder needs its E and its I once, such as 1E 1I 2I 2E.");
    }

    private static IEnumerable<(string, string)> Sizes(EngineFamily family)
    {
        if (family.JournalDiametersIn.Length == 0 || family.JournalDiametersIn.Any(diameter => diameter is < .5 or > 4))
            yield return ("journalDiametersIn", "Journals lie between .5 and 4 in.");
        if (family.LeastBaseCircleIn <= 0 || family.UsualBaseCircleIn < family.LeastBaseCircleIn)
            yield return ("usualBaseCircleIn", "The usual base circle is no smaller than the least one.");
        FieldProblem?[] ranges =
        [
            FieldRange.RockerRatio.Check(family.RockerRatio, "rockerRatio"),
            FieldRange.FollowerDiameter.Check(family.RollerDiameterIn, "rollerDiameterIn"),
            FieldRange.FollowerDiameter.Check(family.FootDiameterIn, "footDiameterIn"),
            FieldRange.LobeSeparation.Check(family.UsualLobeSeparationCamDeg, "usualLobeSeparationCamDeg"),
            FieldRange.Advance.Check(family.UsualAdvanceCrankDeg, "usualAdvanceCrankDeg"),
        ];
        foreach (var range in ranges.OfType<FieldProblem>())
            yield return (range.Field, range.Message);
    }

    [GeneratedRegex("^[0-9]+[IE]$")]
    private static partial Regex LobeName();
}
