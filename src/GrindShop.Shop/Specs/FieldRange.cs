using System.Globalization;

namespace GrindShop.Shop.Specs;

/// <summary>The range in which the shop takes a number seriously, with its unit; one place for form, desk and API.</summary>
public sealed record FieldRange(string Name, double Least, double Most, string Unit)
{
    public static readonly FieldRange LobeLift = new("Lobe lift", .100, .700, "in");
    public static readonly FieldRange ValveLift = new("Valve lift", .100, 1.200, "in");
    public static readonly FieldRange DurationAt050 = new("Duration at .050", 130, 340, "crank degrees");
    public static readonly FieldRange Advertised = new("Advertised duration", 130, 460, "crank degrees");
    public static readonly FieldRange AdvertisedAt = new("Check lift of the advertised duration", .001, .045, "in");
    public static readonly FieldRange Lash = new("Lash", 0, .060, "in");
    public static readonly FieldRange FollowerDiameter = new("Roller or foot diameter", .300, 2.000, "in");
    public static readonly FieldRange RockerRatio = new("Rocker ratio", .8, 2.5, "to 1");
    public static readonly FieldRange LobeSeparation = new("Lobe separation", 90, 130, "cam degrees");
    public static readonly FieldRange IntakeCenterline = new("Intake centreline", 70, 150, "crank degrees");
    public static readonly FieldRange Advance = new("Advance", -20, 20, "crank degrees");
    public static readonly FieldRange MaxBaseCircle = new("Base-circle limit", .400, 3.000, "in");

    /// <summary>Null where the number is in range (or blank); otherwise what is wrong, naming field, unit and range.</summary>
    public FieldProblem? Check(double? value, string field) =>
        value is not { } number || (number >= Least && number <= Most) ? null : new FieldProblem(field, Sentence, Least, Most);

    public string Sentence => string.Create(CultureInfo.InvariantCulture, $"{Name} must lie between {Least:0.###} and {Most:0.###} {Unit}.");
}
