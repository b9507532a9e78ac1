using System.Globalization;
using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.BlankCatalog;

public enum BlankCell
{
    Text,
    Number,
    Choice,
    Family,
    Supplier,
    Sources,
    Long,
}

/// <summary>One fact of a part: its column in files, its label on the page, and how it is written.</summary>
/// <param name="Name">Column name; the unit stands in it.</param>
/// <param name="Label">Label for people.</param>
/// <param name="Unit">Unit, or empty.</param>
/// <param name="Group">Heading that it stands under.</param>
/// <param name="Cell">What may stand in it.</param>
/// <param name="Write">The fact as a cell; empty where there is none.</param>
/// <param name="Choices">The words allowed in a choice.</param>
public sealed record BlankColumn(string Name, string Label, string Unit, string Group, BlankCell Cell, Func<BlankPart, string> Write, IReadOnlyList<string> Choices);

/// <summary>All that is known of a part, in the order of the file. Export, import, the form and the history are made of these.</summary>
public static class BlankColumns
{
    private const string Shape = "Part and engine", Metal = "Metal and gear", Grind = "Nominal grind", Buying = "Buying";

    public static readonly IReadOnlyList<BlankColumn> All =
    [
        Text("partNumber", "Part number", Shape, part => part.PartNumber),
        new("engineFamily", "Engine family", "", Shape, BlankCell.Family, part => part.EngineFamily.Code, []),
        Choice<CamSide>("side", "Side", Shape, part => part.Side),
        Choice<YesNo>("fuelPumpLobe", "Fuel pump lobe", Shape, part => part.FuelPumpLobe ? YesNo.Yes : YesNo.No),
        Choice<BlankForm>("form", "Form of the lobes", Shape, part => part.Form),
        Choice<BlankAlloy>("alloy", "Alloy", Metal, part => part.Alloy),
        Choice<Hardening>("hardening", "Hardening", Metal, part => part.Hardening),
        Number("caseDepthIn", "Case depth", "in", Metal, part => part.CaseDepthIn),
        Number("hardnessHrc", "Surface hardness", "HRC", Metal, part => part.HardnessHrc),
        Choice<CamGear>("camGear", "Cam gear", Metal, part => part.Gear),
        Text("firingOrder", "Firing order", Shape, part => part.FiringOrder),
        Choice<FollowerKind>("followerKind", "Follower", Grind, part => part.Nominal?.FollowerKind),
        Number("rollerRadiusIn", "Roller radius (0 for a flat tappet)", "in", Grind, part => part.Nominal?.RollerRadiusIn),
        Number("intakeLobeLiftIn", "Intake lobe lift", "in", Grind, part => part.Nominal?.Intake.LobeLiftIn),
        Number("intakeDurationAt050CrankDeg", "Intake duration at .050", "crank deg", Grind, part => part.Nominal?.Intake.DurationAt050CrankDeg),
        Number("intakeAdvertisedDurationCrankDeg", "Intake advertised duration", "crank deg", Grind, part => part.Nominal?.Intake.AdvertisedDurationCrankDeg),
        Number("exhaustLobeLiftIn", "Exhaust lobe lift", "in", Grind, part => part.Nominal?.Exhaust.LobeLiftIn),
        Number("exhaustDurationAt050CrankDeg", "Exhaust duration at .050", "crank deg", Grind, part => part.Nominal?.Exhaust.DurationAt050CrankDeg),
        Number("exhaustAdvertisedDurationCrankDeg", "Exhaust advertised duration", "crank deg", Grind, part => part.Nominal?.Exhaust.AdvertisedDurationCrankDeg),
        Number("advertisedAtIn", "Check lift of the advertised durations", "in", Grind, part => part.Nominal?.Intake.AdvertisedAtIn),
        Number("baseCircleDiameterIn", "Nominal base circle", "in", Grind, part => part.Nominal?.BaseCircleDiameterIn),
        Number("stockIn", "Grinding stock per side", "in", Grind, part => part.Nominal?.StockIn),
        Number("lobeSeparationCamDeg", "Lobe separation", "cam deg", Grind, part => part.Nominal?.LobeSeparationCamDeg),
        Number("intakeCenterlineCrankDeg", "Intake centreline", "crank deg", Grind, part => part.Nominal?.IntakeCenterlineCrankDeg),
        Number("roundDiameterIn", "Diameter of a full-round blank", "in", Shape, part => part.RoundDiameterIn),
        Number("leastBaseCircleIn", "Least base circle before the barrel is touched", "in", Shape, part => part.LeastBaseCircleIn),
        Text("driveEnd", "Nose and drive end", Shape, part => part.DriveEnd),
        Text("journalDiametersIn", "Journals from the front, in (empty: the engine's own)", Shape, part => string.Join(' ', part.JournalDiametersIn.Select(Figure))),
        new("supplier", "Supplier", "", Buying, BlankCell.Supplier, part => part.Supplier.Code, []),
        Text("supplierPart", "Supplier's part number", Buying, part => part.SupplierPart),
        Number("costUsd", "Cost", "USD", Buying, part => (double)part.Cost),
        Number("leadTimeDays", "Lead time", "days", Buying, part => part.LeadTimeDays),
        Number("leastQuantity", "Least quantity", "blanks", Buying, part => part.LeastQuantity),
        new("otherSources", "Other suppliers", "", Buying, BlankCell.Sources, part => SourceText.Write(part.OtherSources), []),
        Text("supersedes", "Replaces part number", Buying, part => part.Supersedes ?? ""),
        Text("alternates", "Alternates (part numbers, spaces between)", Buying, part => string.Join(' ', part.Alternates)),
        new("notes", "Notes", "", Buying, BlankCell.Long, part => part.Notes, []),
    ];

    /// <summary>The columns that a full-round blank leaves blank.</summary>
    public static IEnumerable<string> NominalGrind => All.Where(column => column.Group == Grind).Select(column => column.Name);

    public static IReadOnlyDictionary<string, string> Cells(BlankPart part) => All.ToDictionary(column => column.Name, column => column.Write(part));

    /// <summary>What differs between two states of a part.</summary>
    public static IReadOnlyList<FieldChange> Changes(BlankPart before, BlankPart after) =>
    [
        .. from column in All
           let change = new FieldChange(column.Name, column.Write(before), column.Write(after))
           where change.Before != change.After
           select change,
    ];

    /// <summary>The whole catalog as a file that can be read back: UTF-8 with a mark, commas, a header.</summary>
    public static string Csv(IEnumerable<BlankPart> parts) => string.Concat(
        parts.Select(part => CsvText.Record(All.Select(column => column.Cell is BlankCell.Text or BlankCell.Sources or BlankCell.Long ? CsvText.Guarded(column.Write(part)) : column.Write(part))))
            .Prepend(CsvText.Record(All.Select(column => column.Name))));

    private static BlankColumn Text(string name, string label, string group, Func<BlankPart, string> write) => new(name, label, "", group, BlankCell.Text, write, []);

    private static BlankColumn Number(string name, string label, string unit, string group, Func<BlankPart, double?> write) =>
        new(name, label, unit, group, BlankCell.Number, part => write(part) is { } number ? Figure(number) : "", []);

    private static BlankColumn Choice<T>(string name, string label, string group, Func<BlankPart, T?> write)
        where T : struct, Enum => new(name, label, "", group, BlankCell.Choice, part => write(part) is { } choice ? Word(choice.ToString()) : "", [.. Enum.GetNames<T>().Select(Word)]);

    private static string Figure(double number) => number.ToString("0.##########", CultureInfo.InvariantCulture);

    private static string Word(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
