using System.Globalization;
using System.Text;
using GrindShop.Lobes;
using GrindShop.Shop.Engines;

namespace GrindShop.Web.Api;

/// <summary>The angles of all lobes of a cam as CSV, front to rear.</summary>
internal static class LobeAngleTable
{
    public static string Csv(CamLayout layout, CamDatum datum)
    {
        var name = datum == CamDatum.Dowel ? "dowel" : "keyway";
        var text = new StringBuilder($"lobe,cylinder,valve,from {name} (cam deg),work head (cam deg),fullest open (crank deg)\n");
        foreach (var row in layout.Rows)
            text.Append(CultureInfo.InvariantCulture,
                $"{row.Position},{row.Lobe.Cylinder},{row.Lobe.Valve.ToString().ToLowerInvariant()},{row.FromDatumCamDeg:0.0000},{row.WorkHeadCamDeg:0.0000},{row.ValveOpenestCrankDeg:0.0000}\n");
        return text.ToString();
    }
}
