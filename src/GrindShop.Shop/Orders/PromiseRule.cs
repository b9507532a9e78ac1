using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.Orders;

/// <summary>The date the desk is offered to promise: blank in hand, heat treat, working days of grinding.</summary>
public static class PromiseRule
{
    public static DateOnly Suggest(DateOnly today, BlankFit fit, ShopSettings settings)
    {
        var workingDays = settings.UsualGrindDays + (fit.NeedsHeatTreat ? settings.HeatTreatExtraDays : 0);
        return AddWorkingDays(today.AddDays(fit.LeadTimeDays), workingDays);
    }

    /// <summary>The day on which the last cam of the order, on the blanks it was quoted on, is done.</summary>
    public static DateOnly Suggest(DateOnly today, Order order, ShopSettings settings) =>
        order.Cams.Select(cam => Suggest(today, cam, cam.QuotedPartNumber, settings)).Max();

    /// <summary>The same for one cam on a blank; a repair needs none.</summary>
    public static DateOnly Suggest(DateOnly today, OrderCam cam, string? partNumber, ShopSettings settings) =>
        cam.Answer?.Blanks.FirstOrDefault(fit => fit.PartNumber == partNumber) is { } fit ? Suggest(today, fit, settings) : AddWorkingDays(today, settings.UsualGrindDays);

    private static DateOnly AddWorkingDays(DateOnly day, int count)
    {
        while (count > 0)
        {
            day = day.AddDays(1);
            if (day.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday))
                count--;
        }
        return day;
    }
}
