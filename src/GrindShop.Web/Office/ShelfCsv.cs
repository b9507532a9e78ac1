using System.Globalization;
using System.Text;
using GrindShop.Shop.Planning;

namespace GrindShop.Web.Office;

/// <summary>A shelf plan as a table for a spreadsheet: the curve, the chosen shelf, what to add and drop, the wishes won.</summary>
public static class ShelfCsv
{
    public static string Write(ShelfPlan plan, ShelfAdvice advice)
    {
        var text = new StringBuilder();
        Line(text, "part numbers", "cost usd", "bound usd", "proven", "cams served %", "shelf");
        foreach (var (proof, shelf) in plan.Plans.Zip(plan.Best))
            Line(text, proof.Most, shelf.Dollars, ShelfPlan.InDollars(proof.Bound), proof.Proven ? "yes" : "no", 100 * shelf.ServedShare, Parts(plan, shelf));
        Line(text, "today", plan.Today.Dollars, "", "", 100 * plan.Today.ServedShare, Parts(plan, plan.Today));
        Line(text);
        Line(text, "step", "part", "what", "why");
        foreach (var (step, name) in advice.Add.Select(step => (step, "add")).Concat(advice.Drop.Select(step => (step, "drop"))))
            Line(text, name, step.PartNumber, step.What, step.Why);
        Line(text);
        Line(text, "order won", "received", "cams", "blank", "how");
        foreach (var won in advice.Won)
            Line(text, won.Demand.OrderNumber, won.Demand.ReceivedAt.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), won.Demand.Quantity, won.Blank!.Part.PartNumber, ShelfAdvice.Words(won));
        return text.ToString();
    }

    /// <summary>The table as an address that a link saves from.</summary>
    public static string Address(string text) => "data:text/csv;charset=utf-8;base64," + Convert.ToBase64String(Encoding.UTF8.GetBytes(text));

    private static string Parts(ShelfPlan plan, Shelf shelf) => string.Join(' ', shelf.Sites.Select(site => plan.Blank(site).Part.PartNumber));

    private static void Line(StringBuilder text, params object[] cells) => text.AppendJoin(',', cells.Select(Cell)).Append("\r\n");

    /// <summary>Quoted by RFC 4180; a leading sign that a spreadsheet would take for a formula is kept a text.</summary>
    private static string Cell(object cell)
    {
        if (cell is double number)
            return number.ToString("0.##", CultureInfo.InvariantCulture);
        var text = Convert.ToString(cell, CultureInfo.InvariantCulture) ?? "";
        if (text.Length > 0 && "=+-@".Contains(text[0], StringComparison.Ordinal))
            text = "'" + text;
        return text.IndexOfAny([',', '"', '\n', '\r']) < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
