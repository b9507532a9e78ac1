namespace GrindShop.Shop.Records;

/// <summary>What the owner sets once for the whole shop. One row.</summary>
public sealed class ShopSettings
{
    public int Id { get; private set; } = 1;

    /// <summary>Changes with every write.</summary>
    public uint Version { get; private set; }

    public required string ShopName { get; set; }

    public required string Address { get; set; }

    public required string Phone { get; set; }

    public required string Email { get; set; }

    /// <summary>IANA name; times are kept in UTC and shown in this zone.</summary>
    public required string TimeZone { get; set; }

    /// <summary>Least metal that must come off everywhere, along the normal, in.</summary>
    public required double CleanupIn { get; set; }

    /// <summary>Least case that must be left under the finished lobe of an induction-hardened blank, in.</summary>
    public required double LeastInductionCaseIn { get; set; }

    /// <summary>Least case that must be left under the finished lobe of a carburized blank, in.</summary>
    public required double LeastCarburizedCaseIn { get; set; }

    /// <summary>Working days from blank in hand to shipping.</summary>
    public required int UsualGrindDays { get; set; }

    /// <summary>Further days when the blank goes to the heat-treat vendor.</summary>
    public required int HeatTreatExtraDays { get; set; }

    /// <summary>Blank cost is charged at this multiple.</summary>
    public required decimal BlankMarkup { get; set; }

    public DateOnly Today(DateTimeOffset now) => DateOnly.FromDateTime(ShopTime(now));

    /// <summary>The moment when the clock on the shop's wall shows this.</summary>
    public DateTimeOffset Moment(DateTime shopTime) =>
        new DateTimeOffset(DateTime.SpecifyKind(shopTime, DateTimeKind.Unspecified), TimeZoneInfo.FindSystemTimeZoneById(TimeZone).GetUtcOffset(shopTime)).ToUniversalTime();

    public DateTime ShopTime(DateTimeOffset at) => TimeZoneInfo.ConvertTime(at, TimeZoneInfo.FindSystemTimeZoneById(TimeZone)).DateTime;
}
