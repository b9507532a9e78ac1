namespace GrindShop.Web.Floor;

/// <summary>What a scanner or a person gives for a job: its code, or the address that the traveler's code holds.</summary>
public static class ScannedCode
{
    /// <summary>The job code in capitals, such as J1042; empty where nothing was given.</summary>
    public static string Read(string? given)
    {
        var text = (given ?? "").Trim().Split('?', '#')[0].TrimEnd('/');
        var code = text[(text.LastIndexOf('/') + 1)..].Trim();
        return string.Concat(code.Where(letter => !char.IsWhiteSpace(letter))).ToUpperInvariant();
    }
}
