using GrindShop.Shop.Specs;
using GrindShop.Web.Public;

namespace GrindShop.Web.Desk;

/// <summary>A field that somebody changed: its name, what stood there and what stands there now; null for blank.</summary>
public sealed record SpecChange(string Name, string? Was, string? Now)
{
    public static IReadOnlyList<SpecChange> Between(CamSpec older, CamSpec newer) =>
    [
        .. SpecWords.Fields.Select(field => new SpecChange(field.Name, field.Read(older), field.Read(newer))).Where(change => change.Was != change.Now),
    ];

    /// <summary>What was typed on an older specification, carried to a newer one: fields that were not touched take the newer value.</summary>
    public static SpecDraft Carry(CamSpec basis, SpecDraft typed, CamSpec newer)
    {
        var (was, carried) = (SpecDraft.Of(basis), SpecDraft.Of(newer));
        foreach (var (path, text) in typed.Texts)
            if (text != was[path])
                carried[path] = text;
        return carried;
    }
}
