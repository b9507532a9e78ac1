using System.ComponentModel.DataAnnotations;

namespace GrindShop.Web.Api;

// Shapes and names are those of docs/api.md. A field is optional unless it is marked required.

public sealed class LobeFields
{
    [Required, Range(.0501, 1.0)]
    public double? LobeLiftIn { get; set; }

    [Required, Range(60, 400)]
    public double? DurationAt050CrankDeg { get; set; }

    [Required, Range(60, 700)]
    public double? AdvertisedDurationCrankDeg { get; set; }

    [Required, Range(.0005, .045)]
    public double? AdvertisedAtIn { get; set; }
}

public sealed class FollowerFields
{
    [Required, AllowedValues("roller", "flat")]
    public string? Kind { get; set; }

    /// <summary>Roller radius; required for a roller.</summary>
    [Range(.05, 20)]
    public double? RadiusIn { get; set; }
}

public sealed class LobeRequest
{
    [Required]
    public LobeFields? Lobe { get; set; }

    [Required]
    public FollowerFields? Follower { get; set; }

    [Required, Range(.1, 10)]
    public double? BaseCircleDiameterIn { get; set; }

    [Range(.25, 50)]
    public double? WheelRadiusIn { get; set; }

    [Range(0, 1), MaxLength(100)]
    public double[]? DurationsAtIn { get; set; }

    /// <summary>Asks for points at this step.</summary>
    [Range(.05, 90)]
    public double? StepCamDeg { get; set; }
}

public sealed class BlankFields
{
    [Required, AllowedValues("milled", "round")]
    public string? Form { get; set; }

    public LobeFields? Lobe { get; set; }

    public FollowerFields? Follower { get; set; }

    [Range(.1, 10)]
    public double? BaseCircleDiameterIn { get; set; }

    [Range(0, 1)]
    public double? StockIn { get; set; }

    [Range(.1, 10)]
    public double? DiameterIn { get; set; }
}

public sealed class FinishFields
{
    [Required]
    public LobeFields? Lobe { get; set; }

    [Required]
    public FollowerFields? Follower { get; set; }
}

public sealed class StockRequest
{
    [Required]
    public BlankFields? Blank { get; set; }

    [Required]
    public FinishFields? Finish { get; set; }

    [Range(-180, 180)]
    public double? TurnCamDeg { get; set; }

    [Required, Range(0, .5)]
    public double? CleanupIn { get; set; }

    /// <summary>Judges this base circle; without it, the largest that works.</summary>
    [Range(.1, 10)]
    public double? BaseCircleDiameterIn { get; set; }

    [Range(0, 2)]
    public double? CaseDepthIn { get; set; }

    [Range(0, 2)]
    public double? LeastCaseIn { get; set; }
}

public sealed class LobeHolder
{
    [Required]
    public LobeFields? Lobe { get; set; }
}

/// <summary>A pair of lobes and how they stand.</summary>
public class WindowFinishFields
{
    [Required]
    public LobeHolder? Intake { get; set; }

    [Required]
    public LobeHolder? Exhaust { get; set; }

    [Required]
    public FollowerFields? Follower { get; set; }

    [Required, Range(60, 180)]
    public double? LobeSeparationCamDeg { get; set; }

    [Required, Range(0, 240)]
    public double? IntakeCenterlineCrankDeg { get; set; }
}

/// <summary>The pair a blank was milled for, with its base circle and the stock around it.</summary>
public sealed class WindowBlankFields : WindowFinishFields
{
    [Required, Range(.1, 10)]
    public double? BaseCircleDiameterIn { get; set; }

    [Required, Range(0, 1)]
    public double? StockIn { get; set; }
}

public sealed class WindowRequest
{
    [Required]
    public WindowBlankFields? Blank { get; set; }

    [Required]
    public WindowFinishFields? Finish { get; set; }

    [Required, Range(0, .5)]
    public double? CleanupIn { get; set; }

    [Required, Range(.1, 10)]
    public double? BaseCircleDiameterIn { get; set; }

    [Range(0, 2)]
    public double? CaseDepthIn { get; set; }

    [Range(0, 2)]
    public double? LeastCaseIn { get; set; }
}

public sealed class WheelFields
{
    [Required, Range(.1, 10)]
    public double? BaseCircleDiameterIn { get; set; }

    [Required, Range(.25, 50)]
    public double? WheelRadiusIn { get; set; }
}

public sealed class MasterRequest
{
    [Required]
    public LobeFields? Lobe { get; set; }

    [Required]
    public FollowerFields? Follower { get; set; }

    [Required]
    public WheelFields? MadeAt { get; set; }

    [Required, MaxLength(25)]
    public WheelFields[]? GroundAt { get; set; }

    [Required, Range(0, 1), MaxLength(25)]
    public double[]? DurationsAtIn { get; set; }
}

public sealed class TimingRequest
{
    [Required, Range(20, 700)]
    public double? IntakeDurationCrankDeg { get; set; }

    [Required, Range(20, 700)]
    public double? ExhaustDurationCrankDeg { get; set; }

    [Required, Range(60, 180)]
    public double? LobeSeparationCamDeg { get; set; }

    [Required, Range(0, 240)]
    public double? IntakeCenterlineCrankDeg { get; set; }
}

public sealed class ContactRequest
{
    [Required, Range(0, 1e6)]
    public double? ForceLbf { get; set; }

    [Required, Range(.001, 100)]
    public double? WidthIn { get; set; }

    /// <summary>Null is flat, negative is concave.</summary>
    [Range(-1e5, 1e5)]
    public double? Radius1In { get; set; }

    /// <summary>Null is flat, negative is concave.</summary>
    [Range(-1e5, 1e5)]
    public double? Radius2In { get; set; }

    [Required, Range(1e4, 1e9)]
    public double? Modulus1Psi { get; set; }

    [Required, Range(1e4, 1e9)]
    public double? Modulus2Psi { get; set; }

    [Required, Range(0, .5)]
    public double? Poisson1 { get; set; }

    [Required, Range(0, .5)]
    public double? Poisson2 { get; set; }
}
