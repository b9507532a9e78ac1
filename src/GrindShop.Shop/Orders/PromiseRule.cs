using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.Orders;

/// <summary>The date the desk is offered to promise: blank in hand, heat treat, working days of grinding.</summary>
public static class PromiseRule
{
    /// <param name="fit">The blank it is ground from; null for a cam that came in, which needs none.</param>
    public static DateOnly Suggest(DateOnly today, BlankFit? fit, ShopSettings settings)
    {
        var workingDays = settings.UsualGrindDays + (fit is { NeedsHeatTreat: true } ? settings.HeatTreatExtraDays : 0);
        return AddWorkingDays(today.AddDays(fit?.LeadTimeDays ?? 0), workingDays);
    }

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
