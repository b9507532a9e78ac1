using GrindShop.Shop.Routing;

namespace GrindShop.Web.Office;

/// <summary>A number that decides something, and the rows behind it.</summary>
/// <param name="Code">Its name in the page's address.</param>
public sealed record BacklogNumber(string Code, string Title, Func<BacklogRow, DateOnly, bool> Counts);

public static class BacklogNumbers
{
    public static readonly IReadOnlyList<BacklogNumber> All =
    [
        new("late", "Late", (row, _) => row.IsLate),
        new("week", "Due within 7 days", (row, today) => !row.IsLate && row.DueOn <= today.AddDays(7)),
        new("blank", "Waiting for a blank", (row, _) => row.Stage is null),
        new("vendor", "At the heat-treat vendor", (row, _) => row.Stage == Stage.HeatTreatBack),
        new("all", "Open in all", (_, _) => true),
    ];

    public static BacklogNumber Named(string? code) => All.FirstOrDefault(number => number.Code == code) ?? All[^1];
}
