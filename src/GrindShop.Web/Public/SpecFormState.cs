using GrindShop.Shop.Drafts;

namespace GrindShop.Web.Public;

/// <summary>What one form instance keeps from the first, static picture of the page on and through a lost connection.</summary>
public sealed class SpecFormState
{
    /// <summary>The same key sent again is the same enquiry.</summary>
    public string SubmitKey { get; set; } = Guid.NewGuid().ToString("N");

    public Dictionary<string, string> Texts { get; set; } = [];

    /// <summary>Code of the draft in which the shop keeps the texts; null before the first keeping.</summary>
    public string? Code { get; set; }

    /// <summary>Revision of the draft that the texts stand on.</summary>
    public int Revision { get; set; }

    /// <summary>It came by a link or from the shop's list: a draft on this device does not take its place.</summary>
    public bool IsGiven { get; set; }

    /// <summary>A resume link that leads nowhere.</summary>
    public bool IsGone { get; set; }

    /// <summary>Goes on with a draft as the shop keeps it.</summary>
    public void GoOn(KeptDraft draft)
    {
        (SubmitKey, Code, Revision) = (draft.SubmitKey, draft.Code, draft.Revision);
        Texts.Clear();
        foreach (var (path, text) in draft.Texts)
            Texts[path] = text;
    }
}
