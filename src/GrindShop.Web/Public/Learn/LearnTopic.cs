namespace GrindShop.Web.Public.Learn;

/// <summary>One thing that customers ask again and again, explained on a page of its own.</summary>
/// <param name="Slug">Last part of the page's address.</param>
/// <param name="Title">The question's short name.</param>
/// <param name="InShort">The answer in one sentence.</param>
public sealed record LearnTopic(string Slug, string Title, string InShort)
{
    public static readonly LearnTopic Blanks = new("blanks", "Kinds of blanks",
        "A blank with its lobes already roughed in can become few cams and leaves a big base circle; a plain round bar can become any and costs the most work.");

    public static readonly LearnTopic Case = new("case", "The hard case",
        "Steel blanks are hard only near the surface; the deeper that layer, the more may be ground off.");

    public static readonly LearnTopic BaseCircle = new("base-circle", "Base circle, lift and duration",
        "More lift and more duration both cost base circle, and a smaller base circle changes the duration in turn.");

    public static readonly LearnTopic Separation = new("separation", "Why the lobe separation can't move far",
        "Both lobes are already there in the metal; they can be turned a little inside their grinding stock and no further.");

    public static readonly LearnTopic Gears = new("gears", "Which distributor gear to run",
        "The cam's gear and the distributor's gear wear on one another: the pair has to be a good one.");

    public static readonly IReadOnlyList<LearnTopic> All = [Blanks, Case, BaseCircle, Separation, Gears];

    public string Address => $"/learn/{Slug}";
}
