namespace GrindShop.Shop.Records;

/// <summary>What is done one at a time, on whatever web node. The numbers are PostgreSQL's advisory locks: any will do, as long as no two are the same.</summary>
public static class Turn
{
    /// <summary>Nodes that start together.</summary>
    public const long Migrating = 7_240_311;

    /// <summary>Enquiries, so that a key or a new customer sent twice at once is seen the second time.</summary>
    public const long Enquiries = 7_240_312;

    /// <summary>Whoever takes, spoils or gives back blanks of several parts.</summary>
    public const long Blanks = 7_240_313;

    /// <summary>A visit to the mailbox, as long as it takes.</summary>
    public const long Mailbox = 7_240_314;

    /// <summary>Acts on the people who may sign in.</summary>
    public const long People = 7_240_315;

    /// <summary>Promises to customers, each of which counts on blanks that lie free.</summary>
    public const long Promises = 7_240_316;
}
