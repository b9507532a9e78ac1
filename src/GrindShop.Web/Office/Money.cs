using System.Globalization;

namespace GrindShop.Web.Office;

/// <summary>How money, shares and counts are said on the pages of the office.</summary>
public static class Money
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    public static string Dollars(decimal amount) => "$" + amount.ToString("N2", Plain);

    public static string Whole(decimal amount) => "$" + amount.ToString("N0", Plain);

    public static string Whole(double amount) => "$" + amount.ToString("N0", Plain);

    public static string Percent(double share) => (100 * share).ToString("0.#", Plain) + " %";

    public static string Tenth(double value) => value.ToString("0.0", Plain);
}
