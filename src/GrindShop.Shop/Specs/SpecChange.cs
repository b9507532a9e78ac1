namespace GrindShop.Shop.Specs;

/// <summary>A field that somebody changed: its name, what stood there and what stands there now; null for blank.</summary>
public sealed record SpecChange(string Name, string? Was, string? Now)
{
    public static IReadOnlyList<SpecChange> Between(CamSpec older, CamSpec newer) =>
    [
        .. SpecWords.Fields.Select(field => new SpecChange(field.Name, field.Read(older), field.Read(newer))).Where(change => change.Was != change.Now),
    ];
}
