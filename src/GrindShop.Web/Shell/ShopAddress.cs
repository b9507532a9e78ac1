namespace GrindShop.Web.Shell;

/// <summary>The address under which people reach the shop, for links in mails and codes on papers.</summary>
internal static class ShopAddress
{
    private const string Setting = "GRINDSHOP_ADDRESS";

    /// <summary>The address that was set, without a slash at its end; null where none was.</summary>
    public static string? Given(IConfiguration settings) => settings[Setting] is { } given && !string.IsNullOrWhiteSpace(given) ? given.Trim().TrimEnd('/') : null;

    /// <summary>The address that was set, or the one the application listens on.</summary>
    public static string Of(IConfiguration settings) => Given(settings) ?? Listening(settings["urls"]) ?? Program.UsualAddress;

    private static string? Listening(string? urls) => urls?.Split(';').FirstOrDefault(url => url.Length > 0)?.TrimEnd('/')
        .Replace("//*", "//localhost", StringComparison.Ordinal).Replace("//+", "//localhost", StringComparison.Ordinal)
        .Replace("//0.0.0.0", "//localhost", StringComparison.Ordinal).Replace("//[::]", "//localhost", StringComparison.Ordinal);
}
