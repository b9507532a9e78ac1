using GrindShop.Lobes;
using GrindShop.Shop.Engines;

namespace GrindShop.Shop.Blanks;

public enum BlankForm
{
    AsCast,
    Milled,
    FullRound,
}

public enum BlankAlloy
{
    HardenableIron,
    AustemperedDuctileIron,
    Steel1050,
    Steel1055,
    Steel5150,
    Steel5160,
    Steel8660,
    Steel8620,
    ToolSteel,
}

public enum Hardening
{
    /// <summary>Not hardened yet: rough grind, heat-treat vendor, finish grind.</summary>
    Soft,

    /// <summary>Flame or chill hardened iron, hard down to the barrel.</summary>
    ToTheBarrel,

    /// <summary>Hard through the whole section.</summary>
    Through,
    Induction,
    Carburized,
}

public enum CamGear
{
    None,
    HardenableIron,
    AustemperedDuctileIron,

    /// <summary>Steel, cut in one piece with the shaft.</summary>
    Steel,

    /// <summary>An iron gear pressed on a steel shaft (three-piece cam): rear-gear engines only.</summary>
    PressedIron,
}

/// <summary>What the lobes of a blank were cast or milled for; the stock stands around it.</summary>
public sealed record NominalGrind
{
    public required LobeSpec Intake { get; init; }

    public required LobeSpec Exhaust { get; init; }

    public required FollowerKind FollowerKind { get; init; }

    /// <summary>0 for a flat tappet.</summary>
    public required double RollerRadiusIn { get; init; }

    public required double BaseCircleDiameterIn { get; init; }

    /// <summary>Grinding stock per side around the nominal lobe, along the normal, in.</summary>
    public required double StockIn { get; init; }

    public required double LobeSeparationCamDeg { get; init; }

    public required double IntakeCenterlineCrankDeg { get; init; }

    public Follower Follower => FollowerKind == FollowerKind.Flat ? Follower.Flat : Follower.Roller(RollerRadiusIn);

    public double ExhaustCenterlineCrankDeg => 2 * LobeSeparationCamDeg - IntakeCenterlineCrankDeg;
}

/// <summary>A part number of the catalog: the unground cam.</summary>
public sealed class BlankPart
{
    public int Id { get; private set; }

    public required string PartNumber { get; init; }

    public int EngineFamilyId { get; init; }

    public required EngineFamily EngineFamily { get; init; }

    public required BlankForm Form { get; init; }

    public required BlankAlloy Alloy { get; init; }

    public required Hardening Hardening { get; init; }

    /// <summary>Depth of the hardened layer from the blank's surface, in; null where there is none or no end to it.</summary>
    public double? CaseDepthIn { get; init; }

    /// <summary>Surface hardness as delivered, Rockwell C; null for a soft blank.</summary>
    public double? HardnessHrc { get; init; }

    public required CamGear Gear { get; init; }

    public CamSide? Side { get; init; }

    /// <summary>It carries, or leaves the metal for, the lobe that drives a mechanical fuel pump.</summary>
    public bool FuelPumpLobe { get; init; }

    /// <summary>The lobes it was cast or milled for; null for a full-round blank.</summary>
    public NominalGrind? Nominal { get; init; }

    /// <summary>Diameter of a full-round blank, in; null for any other form.</summary>
    public double? RoundDiameterIn { get; init; }

    /// <summary>The firing order its lobes were indexed for; any order can be ground on a full-round blank.</summary>
    public required string FiringOrder { get; init; }

    /// <summary>Smallest base circle before the barrel is touched, in.</summary>
    public required double LeastBaseCircleIn { get; init; }

    public int SupplierId { get; init; }

    public required Vendor Supplier { get; init; }

    public required decimal Cost { get; init; }

    public required int LeadTimeDays { get; init; }

    /// <summary>What the supplier calls it; empty where nobody has asked.</summary>
    public string SupplierPart { get; init; } = "";

    /// <summary>The supplier sells no fewer.</summary>
    public int LeastQuantity { get; init; } = 1;

    /// <summary>Who else sells it.</summary>
    public List<BlankSource> OtherSources { get; init; } = [];

    /// <summary>Nose and drive end as cut: dowels, threads, drive gear or keyway; empty means as usual for the engine.</summary>
    public string DriveEnd { get; init; } = "";

    /// <summary>Journal diameters from the front, in; empty means the engine's own.</summary>
    public double[] JournalDiametersIn { get; init; } = [];

    /// <summary>The older part number that this one replaces; the older one is used up and not bought again.</summary>
    public string? Supersedes { get; init; }

    /// <summary>Part numbers that may be bought or used instead.</summary>
    public string[] Alternates { get; init; } = [];

    public string Notes { get; init; } = "";

    public uint Version { get; private set; }

    /// <summary>Shaft, pressed-on gear and its fit: a cam of three pieces, whatever state its lobes are in.</summary>
    public bool IsThreePiece => Gear == CamGear.PressedIron;

    public bool IsSoft => Hardening == Hardening.Soft;

    /// <summary>The supplier that it is bought from unless somebody chooses another.</summary>
    public BlankSource Usual => new() { SupplierId = SupplierId, Supplier = Supplier, SupplierPart = SupplierPart, Cost = Cost, LeadTimeDays = LeadTimeDays, LeastQuantity = LeastQuantity };

    /// <summary>What this vendor asks for it; null where the vendor does not sell it.</summary>
    public BlankSource? From(int vendorId) => vendorId == SupplierId ? Usual : OtherSources.Find(source => source.SupplierId == vendorId);
}
