using System.ComponentModel.DataAnnotations;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Web.Api;

/// <summary>The range of one of the shop's specification fields, by the name of the <see cref="FieldRange"/>.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class SpecRangeAttribute(string name) : RangeAttribute(Of(name).Least, Of(name).Most)
{
    private static FieldRange Of(string name) => (FieldRange)typeof(FieldRange).GetField(name)!.GetValue(null)!;
}

public sealed class SpecLobeFields
{
    [SpecRange(nameof(FieldRange.LobeLift))]
    public double? LobeLiftIn { get; set; }

    [SpecRange(nameof(FieldRange.ValveLift))]
    public double? ValveLiftIn { get; set; }

    [SpecRange(nameof(FieldRange.DurationAt050))]
    public double? DurationAt050CrankDeg { get; set; }

    [SpecRange(nameof(FieldRange.Advertised))]
    public double? AdvertisedDurationCrankDeg { get; set; }

    [SpecRange(nameof(FieldRange.AdvertisedAt))]
    public double? AdvertisedAtIn { get; set; }

    [SpecRange(nameof(FieldRange.Lash))]
    public double? LashIn { get; set; }
}

public sealed class SpecLobeHolder
{
    public SpecLobeFields? Lobe { get; set; }
}

public sealed class SpecFollowerFields
{
    [Required, AllowedValues("roller", "flat")]
    public string? Kind { get; set; }

    /// <summary>Radius of the roller.</summary>
    [Range(.15, 1.0)]
    public double? RadiusIn { get; set; }

    /// <summary>Diameter of a flat tappet's foot; blank takes the family's usual one.</summary>
    [SpecRange(nameof(FieldRange.FollowerDiameter))]
    public double? FootDiameterIn { get; set; }
}

/// <summary>A specification as programs send it; blank fields are filled by the shop's usual values where it can.</summary>
public class SpecFields
{
    [MaxLength(20)]
    public string? EngineFamily { get; set; }

    [AllowedValues("left", "right")]
    public string? Side { get; set; }

    [AllowedValues("hydraulicRoller", "solidRoller", "hydraulicFlat", "solidFlat")]
    public string? Lifter { get; set; }

    public SpecFollowerFields? Follower { get; set; }

    public SpecLobeHolder? Intake { get; set; }

    public SpecLobeHolder? Exhaust { get; set; }

    [SpecRange(nameof(FieldRange.RockerRatio))]
    public double? RockerRatio { get; set; }

    [SpecRange(nameof(FieldRange.LobeSeparation))]
    public double? LobeSeparationCamDeg { get; set; }

    [SpecRange(nameof(FieldRange.IntakeCenterline))]
    public double? IntakeCenterlineCrankDeg { get; set; }

    [AllowedValues("iron", "nitrocarburizedSteel", "bronze", "polymerComposite")]
    public string? DistributorGear { get; set; }

    /// <summary>Whether a mechanical fuel pump is run; blank where nobody said.</summary>
    public bool? MechanicalFuelPump { get; set; }

    [SpecRange(nameof(FieldRange.MaxBaseCircle))]
    public double? MaxBaseCircleDiameterIn { get; set; }

    [MaxLength(SpecCheck.LongestFiringOrder)]
    public string? FiringOrder { get; set; }

    /// <summary>The shop's own value; contradictions between lifter and follower are named.</summary>
    internal CamSpec ToSpec(FieldProblems problems)
    {
        var lifter = Choice<LifterType>(Lifter);
        if (Follower is { Kind: { } kind } && lifter is { } known && (kind == "roller") != known.IsRoller())
            problems.Add("follower.kind", $"A {known.Words()} does not ride on a {kind} follower.");
        return new CamSpec
        {
            EngineFamily = EngineFamily,
            Side = Choice<CamSide>(Side),
            Lifter = lifter,
            FollowerDiameterIn = Follower?.Kind == "flat" ? Follower.FootDiameterIn : 2 * Follower?.RadiusIn,
            Intake = Wish(Intake?.Lobe),
            Exhaust = Wish(Exhaust?.Lobe),
            RockerRatio = RockerRatio,
            LobeSeparationCamDeg = LobeSeparationCamDeg,
            IntakeCenterlineCrankDeg = IntakeCenterlineCrankDeg,
            DistributorGear = Choice<DistributorGear>(DistributorGear),
            MechanicalFuelPump = MechanicalFuelPump,
            MaxBaseCircleDiameterIn = MaxBaseCircleDiameterIn,
            FiringOrder = string.IsNullOrWhiteSpace(FiringOrder) ? null : FiringOrder.Trim(),
        };
    }

    /// <summary>The same problem under the field's name in this request.</summary>
    internal static FieldProblem Rename(FieldProblem problem) => problem with
    {
        Field = problem.Field switch
        {
            "followerDiameterIn" => "follower.radiusIn",
            _ when problem.Field.StartsWith("intake.", StringComparison.Ordinal) => $"intake.lobe.{problem.Field["intake.".Length..]}",
            _ when problem.Field.StartsWith("exhaust.", StringComparison.Ordinal) => $"exhaust.lobe.{problem.Field["exhaust.".Length..]}",
            _ => problem.Field,
        },
    };

    private static LobeWish Wish(SpecLobeFields? lobe) => lobe is null ? new LobeWish() : new LobeWish
    {
        LobeLiftIn = lobe.LobeLiftIn,
        ValveLiftIn = lobe.ValveLiftIn,
        DurationAt050CrankDeg = lobe.DurationAt050CrankDeg,
        AdvertisedDurationCrankDeg = lobe.AdvertisedDurationCrankDeg,
        AdvertisedAtIn = lobe.AdvertisedAtIn,
        LashIn = lobe.LashIn,
    };

    private static T? Choice<T>(string? name)
        where T : struct, Enum => name is null ? null : Enum.Parse<T>(name, ignoreCase: true);
}
