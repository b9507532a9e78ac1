namespace GrindShop.Shop.Specs.Entry;

/// <summary>The words of the trade that lines are written in (common practice, no source), each with one meaning.</summary>
internal static class EntryWords
{
    public static readonly IReadOnlySet<string> Intake = Set("int intake inlet intk");
    public static readonly IReadOnlySet<string> Exhaust = Set("ex exh exhaust exst");
    public static readonly IReadOnlySet<string> Hydraulic = Set("hyd hydr hydraulic hydraulics hydro");
    public static readonly IReadOnlySet<string> Solid = Set("solid solids mech mechanical mechanicals");
    public static readonly IReadOnlySet<string> Roller = Set("roller rollers rlr");
    public static readonly IReadOnlySet<string> Lifter = Set("lifter lifters tappet tappets follower followers");
    public static readonly IReadOnlySet<string> Wheel = Set("wheel wheels");
    public static readonly IReadOnlySet<string> Foot = Set("foot feet");
    public static readonly IReadOnlySet<string> Diameter = Set("dia diam diameter od size");
    public static readonly IReadOnlySet<string> Rocker = Set("rr rocker rockers rkr");
    public static readonly IReadOnlySet<string> Lash = Set("lash");
    public static readonly IReadOnlySet<string> Lift = Set("lift lifts");
    public static readonly IReadOnlySet<string> Duration = Set("dur dura duration durations");
    public static readonly IReadOnlySet<string> Advertised = Set("adv advertised advert");
    public static readonly IReadOnlySet<string> Separation = Set("lsa sep separation spread");
    public static readonly IReadOnlySet<string> Centerline = Set("cl centerline centreline centerlines centrelines center centre centers centres ctr");
    public static readonly IReadOnlySet<string> Advance = Set("adv advance advanced advancement");
    public static readonly IReadOnlySet<string> Retard = Set("retard retarded ret");
    public static readonly IReadOnlySet<string> Swap = Set("swap swapped swaps exchanged");
    public static readonly IReadOnlySet<string> With = Set("with w using");
    public static readonly IReadOnlySet<string> Degree = Set("deg degree degrees degs °");
    public static readonly IReadOnlySet<string> Thousandth = Set("thou thousandth thousandths");
    public static readonly IReadOnlySet<string> Inch = Set("in inch inches \"");
    public static readonly IReadOnlySet<string> Negation = Set("no not without isn't isnt non never");
    public static readonly IReadOnlySet<string> Hedge = Set("about around approx approximately roughly maybe probably ~");

    /// <summary>Units of figures that are no part of a cam specification.</summary>
    public static readonly IReadOnlySet<string> Foreign =
        Set("hp rpm ci cid cubic cubes lb lbs pound pounds psi octane mph cc day days week weeks pcs teeth tooth miles mile dollars bucks usd stroke bore cylinder cylinders cyl");

    /// <summary>Words and marks that say nothing by themselves between things that were understood.</summary>
    public static readonly IReadOnlySet<string> Filler =
        Set("and with w a an the of for is are at on in to cam cams camshaft grind ground cut it's its engine motor , ; . / - & : = ( ) \" [ ]");

    /// <summary>Every word that a number may be written together with, such as 112lsa or rr1.6.</summary>
    public static readonly IReadOnlySet<string> Known = new HashSet<string>(
    [
        .. Intake, .. Exhaust, .. Hydraulic, .. Solid, .. Roller, .. Lifter, .. Wheel, .. Foot, .. Diameter, .. Rocker, .. Lash, .. Lift, .. Duration, .. Advertised,
        .. Separation, .. Centerline, .. Advance, .. Retard, .. Swap, .. With, .. Degree, .. Thousandth, .. Inch, .. Set("mm icl ecl lobe lobes valve gross bc at x s hr sr ratio max i e gear dist distributor iron bronze poly base flat"),
    ]);

    private static HashSet<string> Set(string words) => [.. words.Split(' ')];
}
