using GrindShop.Shop.Specs;
using GrindShop.Web.Public;

namespace GrindShop.Web.Desk;

/// <summary>What was typed on an older specification, carried to a newer one.</summary>
public static class SpecCarry
{
    /// <summary>Fields that were not touched take the newer value.</summary>
    public static SpecDraft Carry(CamSpec basis, SpecDraft typed, CamSpec newer)
    {
        var (was, carried) = (SpecDraft.Of(basis), SpecDraft.Of(newer));
        foreach (var (path, text) in typed.Texts)
            if (text != was[path])
                carried[path] = text;
        return carried;
    }
}
