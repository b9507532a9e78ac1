namespace GrindShop.Web.Public;

/// <summary>What one form instance keeps from the first, static picture of the page on and through a lost connection.</summary>
public sealed class SpecFormState
{
    /// <summary>The same key sent again is the same enquiry.</summary>
    public string SubmitKey { get; set; } = Guid.NewGuid().ToString("N");

    public Dictionary<string, string> Texts { get; set; } = [];
}
