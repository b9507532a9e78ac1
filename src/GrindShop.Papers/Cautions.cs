namespace GrindShop.Papers;

/// <summary>The cautions that go with the work and with the cam.</summary>
internal static class Cautions
{
    public static readonly string[] Shop =
    [
        "Wheels: ring test before mounting, never above the speed the maker marked. Guards closed, eye protection on.",
        "Quenching, cyanide and nitriding salts are hazardous: hot work and salts are left to licensed heat-treaters.",
        "Local codes, the wheel maker's marking and licensed heat-treaters' practice decide; this sheet does not replace them.",
    ];

    public const string DistributorGear = "Distributor gear: check the contact pattern early and look at the wear again after the first hours.";

    // The two clearances are common practice, quoted from memory; no published source.
    public static readonly string[] Engine =
    [
        "Piston-to-valve clearance: check it on this engine. Usual smallest figures quoted are .080 in intake and .100 in exhaust (common practice); the engine builder's own figures win.",
        "Check coil bind, retainer-to-seal clearance at full lift, and rocker and pushrod geometry.",
        DistributorGear,
        "Flat tappets: the right oil, spring load and break-in procedure, as the makers of oil, springs and lifters give them.",
        "Lash is set as the maker of the valve train says, hot or cold; hydraulic lifters run none: set their preload as their maker says.",
        "Durations are counted on lifter lift, not on valve lift. The figures are a planning aid: the builder verifies them on the engine.",
    ];

    /// <summary>Draws the sentences as a list; answers the y below.</summary>
    public static double Draw(Sheet sheet, double y, double sizePt, IEnumerable<string> sentences)
    {
        foreach (var sentence in sentences)
        {
            sheet.Text(Sheet.Left, y + sizePt, "•", Weight.Regular, sizePt);
            y = sheet.Lines(Sheet.Left + 9, y + sizePt, Sheet.Width - 9, sentence, Weight.Regular, sizePt) - sizePt + 1;
        }
        return y;
    }
}
