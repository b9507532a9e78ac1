namespace GrindShop.Lobes;

/// <summary>Whether the lobes listed along a shaft are those of its engine.</summary>
internal static class ShaftCheck
{
    internal static CamLayoutProblem? Problem(EngineBanks engine, CamShaft shaft)
    {
        if (shaft.Lobes.Count == 0)
            return new CamLayoutProblem.NoLobes();
        if (shaft.Lobes.Select(lobe => lobe.Cylinder).Except(engine.Firing.Order.Cylinders).ToList() is [var unknown, ..])
            return new CamLayoutProblem.UnknownCylinder(unknown);
        if (shaft.OnlyBank is not { } name)
            return Uneven(shaft.Lobes, engine.Firing.Order.Cylinders);
        return engine.Banks.FirstOrDefault(bank => bank.Name == name) is { } only
            ? Outside(shaft.Lobes, only) ?? Uneven(shaft.Lobes, only.Cylinders)
            : new CamLayoutProblem.UnknownBank(name);
    }

    private static CamLayoutProblem? Outside(IReadOnlyList<LobePlace> lobes, Bank only)
    {
        foreach (var lobe in lobes)
            if (!only.Cylinders.Contains(lobe.Cylinder))
                return new CamLayoutProblem.LobeOfOtherBank(lobe, only.Name);
        return null;
    }

    // As many lobes of a kind as the cylinder that has most of them: a forgotten lobe shows, whole kinds may be absent.
    private static CamLayoutProblem? Uneven(IReadOnlyList<LobePlace> lobes, IReadOnlyList<int> cylinders)
    {
        foreach (var kind in Enum.GetValues<ValveKind>())
        {
            var counts = cylinders.ToDictionary(
                cylinder => new LobePlace(cylinder, kind), cylinder => lobes.Count(lobe => lobe == new LobePlace(cylinder, kind)));
            var (place, found) = counts.MinBy(count => count.Value);
            if (found != counts.Values.Max())
                return new CamLayoutProblem.UnevenLobes(place, found, counts.Values.Max());
        }
        return null;
    }
}
