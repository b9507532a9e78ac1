using GrindShop.Shop.Engines;

namespace GrindShop.Shop.Specs;

/// <summary>What does not go together, as a question that says both sides of it.</summary>
internal static class ContradictionWords
{
    public static string Ask(FieldProblem problem, CamSpec spec, EngineFamily? family)
    {
        var lobe = problem.Field.Split('.')[0];
        var wish = lobe == "exhaust" ? spec.Exhaust : spec.Intake;
        return problem.Field.Split('.')[^1] switch
        {
            "engineFamily" => $"We do not know an engine \"{spec.EngineFamily}\". Which engine is the camshaft for?",
            "advanceCrankDeg" when problem.Least is null => Advance(spec),
            "valveLiftIn" when problem.Least is null => Lifts(lobe, wish, spec.RockerRatio ?? family?.RockerRatio),
            "lashIn" when problem.Most == 0 => $"You named {spec.Lifter?.Words()} lifters and a lash, but hydraulic lifters run without lash. Are the lifters solid, or shall we leave the lash out?",
            "advertisedDurationCrankDeg" when wish.AdvertisedDurationCrankDeg <= wish.DurationAt050CrankDeg => Durations(lobe, wish),
            "side" => "You named a side, but this engine has one camshaft. Is it another engine, or shall we leave the side out?",
            "distributorGear" => "You named a distributor gear, but this engine has no distributor. Is it another engine, or shall we leave the gear out?",
            "firingOrder" => $"The firing order \"{spec.FiringOrder}\" does not belong to this engine. Which cylinders fire in which order?",
            _ => $"{problem.Message} {About(lobe)}What is the right figure?",
        };
    }

    private static string Advance(CamSpec spec) => FormattableString.Invariant(
        $"You gave a lobe separation of {spec.LobeSeparationCamDeg:0.##}, an intake centreline of {spec.IntakeCenterlineCrankDeg:0.##} and an advance of {spec.AdvanceCrankDeg:0.##}, but {spec.LobeSeparationCamDeg:0.##} less {spec.IntakeCenterlineCrankDeg:0.##} is {spec.LobeSeparationCamDeg - spec.IntakeCenterlineCrankDeg:0.##}. Which two of the three shall we go by?");

    private static string Lifts(string lobe, LobeWish wish, double? ratio) => FormattableString.Invariant(
        $"On the {lobe} you gave {wish.LobeLiftIn:.000#} in at the lobe and {wish.ValveLiftIn:.000#} in at the valve, but {wish.LobeLiftIn:.000#} times the rocker ratio {ratio:0.##} is {wish.LobeLiftIn * ratio:.000}. Which of the two shall we go by, or is the rocker ratio another?");

    private static string Durations(string lobe, LobeWish wish) => FormattableString.Invariant(
        $"On the {lobe} you gave an advertised duration of {wish.AdvertisedDurationCrankDeg:0.##} and {wish.DurationAt050CrankDeg:0.##} at .050, but the advertised one must be the longer. Which durations do you want?");

    private static string About(string lobe) => lobe is "intake" or "exhaust" ? $"This is about the {lobe}. " : "";
}
