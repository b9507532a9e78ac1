using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using GrindShop.Web.Public;

namespace GrindShop.Web.Desk;

/// <summary>A specification of an order in somebody's hands: what was typed stays when somebody else changes it, the fields that were not touched follow.</summary>
internal sealed class SpecTyping
{
    private readonly CatalogContent _content;
    private CamSpec _basis;

    public SpecTyping(CamSpec spec, CatalogContent content)
    {
        (_basis, _content, Draft) = (spec, content, SpecDraft.Of(spec));
        Read();
    }

    public SpecDraft Draft { get; private set; }

    public SpecReading Reading { get; private set; } = SpecReading.Nothing;

    public void Read() => Reading = SpecReading.Of(Draft, _content);

    /// <summary>True where the specification of the order is another one than it was.</summary>
    public bool Follow(CamSpec newer)
    {
        if (ReferenceEquals(newer, _basis))
            return false;
        (Draft, _basis) = (SpecCarry.Carry(_basis, Draft, newer), newer);
        Read();
        return true;
    }
}
