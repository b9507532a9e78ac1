using Microsoft.Extensions.Configuration;

namespace GrindShop.Shop.Records;

/// <summary>Where the private PostgreSQL keeps its data and how it runs.</summary>
/// <param name="DataFolder">Holds the cluster (<c>postgres/</c>), its log and its lock; made when missing.</param>
public sealed record PrivatePostgresOptions(string DataFolder)
{
    public const string DataSetting = "GRINDSHOP_DATA";
    public const string BinSetting = "GRINDSHOP_POSTGRES_BIN";

    /// <summary>Folder with <c>postgres</c> and <c>initdb</c>; null searches PATH, then /usr/lib/postgresql.</summary>
    public string? BinFolder { get; init; }

    /// <summary>False gives up safety against power loss for speed: tests only.</summary>
    public bool Durable { get; init; } = true;

    public static PrivatePostgresOptions From(IConfiguration settings) =>
        new(NonBlank(settings[DataSetting]) ?? ".data") { BinFolder = NonBlank(settings[BinSetting]) };

    private static string? NonBlank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text;
}
