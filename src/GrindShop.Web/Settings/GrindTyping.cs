using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Grinds;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Starting;
using GrindShop.Web.Public;

namespace GrindShop.Web.Settings;

/// <summary>A grind of the shop's list while it is typed.</summary>
internal sealed class GrindTyping(GrindEntry? entry)
{
    public string Name { get; set; } = entry?.Name ?? "";

    public StartUse Use { get; set; } = entry?.Use ?? StartUse.Street;

    public string Summary { get; set; } = entry?.Summary ?? "";

    public SpecDraft Draft { get; } = SpecDraft.Of(entry?.Spec ?? new CamSpec());

    public SpecReading Reading { get; private set; } = SpecReading.Nothing;

    public GrindEntry Entry => new() { Name = Name.Trim(), Use = Use, Summary = Summary.Trim(), Spec = Reading.Spec };

    /// <summary>A figure that cannot be read, or null.</summary>
    public FieldProblem? Unreadable => Draft.Unreadable().FirstOrDefault();

    public void Read(CatalogContent content) => Reading = SpecReading.Of(Draft, content);
}
