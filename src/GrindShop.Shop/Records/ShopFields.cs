using System.Globalization;
using System.Net.Mail;

namespace GrindShop.Shop.Records;

/// <summary>One thing the owner sets for the whole shop, as a text that is read and written. A new setting needs a line in <see cref="ShopFields.All"/>.</summary>
/// <param name="Key">Its name in histories, such as cleanupIn.</param>
/// <param name="Unit">Stands behind the figure; empty for words.</param>
/// <param name="Set">Puts the text into the settings; answers what is wrong with it, or null.</param>
public sealed record ShopField(string Key, string Name, string Unit, string Hint, Func<ShopSettings, string> Get, Func<ShopSettings, string, string?> Set)
{
    public string Words(ShopSettings settings) => Unit.Length == 0 ? Get(settings) : $"{Get(settings)} {Unit}";
}

/// <summary>What the owner sets for the whole shop, with the range in which it is taken seriously.</summary>
public static class ShopFields
{
    public static readonly IReadOnlyList<ShopField> All =
    [
        Text("shopName", "Shop name", "Heads every paper.", 100, s => s.ShopName, (s, text) => s.ShopName = text),
        Text("address", "Address", "Stands on papers.", 200, s => s.Address, (s, text) => s.Address = text),
        Text("phone", "Phone", "Stands on papers.", 40, s => s.Phone, (s, text) => s.Phone = text),
        new("email", "E-mail address", "", "Stands on papers.", s => s.Email, SetEmail),
        new("timeZone", "Time zone", "", "A name of the IANA list, such as America/Chicago: days and times are shown in it.", s => s.TimeZone, SetZone),
        Inches("cleanupIn", "Clean-up", "Least metal that must come off everywhere, so that no blank surface is left.", 0, .030, s => s.CleanupIn, (s, value) => s.CleanupIn = value),
        Inches("leastInductionCaseIn", "Least case, induction hardened", "Must be left under the finished lobe.", 0, .500, s => s.LeastInductionCaseIn, (s, value) => s.LeastInductionCaseIn = value),
        Inches("leastCarburizedCaseIn", "Least case, carburized", "Must be left under the finished lobe.", 0, .120, s => s.LeastCarburizedCaseIn, (s, value) => s.LeastCarburizedCaseIn = value),
        Days("usualGrindDays", "Usual grinding time", "From blank in hand to shipping.", 1, s => s.UsualGrindDays, (s, value) => s.UsualGrindDays = value),
        Days("heatTreatExtraDays", "More for heat treatment", "When the blank goes to the heat-treat vendor.", 0, s => s.HeatTreatExtraDays, (s, value) => s.HeatTreatExtraDays = value),
        new("blankMarkup", "Mark-up on blanks", "times", "The blank's cost is charged at this multiple.", s => s.BlankMarkup.ToString("0.###", CultureInfo.InvariantCulture), SetMarkup),
    ];

    private static ShopField Text(string key, string name, string hint, int longest, Func<ShopSettings, string> get, Action<ShopSettings, string> set) => new(key, name, "", hint, get, (settings, text) =>
    {
        if (text.Length == 0 || text.Length > longest || text.Any(char.IsControl))
            return $"{name} must be 1 to {longest} printable characters long.";
        set(settings, text);
        return null;
    });

    private static ShopField Inches(string key, string name, string hint, double least, double most, Func<ShopSettings, double> get, Action<ShopSettings, double> set) =>
        new(key, name, "in", hint, settings => get(settings).ToString("0.000#", CultureInfo.InvariantCulture), (settings, text) =>
        {
            if (!double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || !(value >= least && value <= most))
                return string.Create(CultureInfo.InvariantCulture, $"{name} must lie between {least:0.000} and {most:0.000} in.");
            set(settings, value);
            return null;
        });

    private static ShopField Days(string key, string name, string hint, int least, Func<ShopSettings, int> get, Action<ShopSettings, int> set) =>
        new(key, name, "working days", hint, settings => get(settings).ToString(CultureInfo.InvariantCulture), (settings, text) =>
        {
            if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var value) || value < least || value > 250)
                return $"{name} must be a whole number between {least} and 250 working days.";
            set(settings, value);
            return null;
        });

    private static string? SetEmail(ShopSettings settings, string text)
    {
        if (text.Length > 200 || !MailAddress.TryCreate(text, out var address) || address.Address != text || !address.Host.Contains('.'))
            return "This is not an e-mail address; one looks like name@example.com.";
        settings.Email = text;
        return null;
    }

    private static string? SetZone(ShopSettings settings, string text)
    {
        if (!TimeZoneInfo.TryFindSystemTimeZoneById(text, out var zone) || !zone.HasIanaId)
            return "There is no such time zone; names look like America/Chicago or Europe/Berlin.";
        settings.TimeZone = text;
        return null;
    }

    private static string? SetMarkup(ShopSettings settings, string text)
    {
        if (!decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || value < 1 || value > 10 || decimal.Round(value, 2) != value)
            return "The mark-up must lie between 1 and 10, with at most two decimals.";
        settings.BlankMarkup = value;
        return null;
    }
}
