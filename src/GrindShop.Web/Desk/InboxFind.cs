using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Web.Shell;

namespace GrindShop.Web.Desk;

/// <summary>Finds orders by whatever the desk remembers of them.</summary>
public static class InboxFind
{
    /// <summary>Every word typed occurs somewhere in what the row shows.</summary>
    public static bool Matches(InboxRow row, string text)
    {
        var shown = Shown(row);
        return text.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(word => shown.Contains(word, StringComparison.OrdinalIgnoreCase));
    }

    private static string Shown(InboxRow row) => string.Join(' ',
        row.Number, row.State.Words(), row.Channel.Words(), row.Customer, row.Reference,
        row.Spec.EngineFamily, row.Spec.Lifter?.Words(), row.Spec.Short(), Say.Answered(row.Kind, row.Verdict), row.Kind.Words());
}
