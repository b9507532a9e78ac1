namespace GrindShop.Shop.Specs.Entry;

/// <summary>Figures whose kind the text around them does not tell.</summary>
internal sealed record BarePair(int From, int To, Pair Pair)
{
    public double Value => Pair.First.Value;
}

/// <summary>Settles bare durations and lifts by the other figures of the text: the longer duration is the advertised one, the larger lift the valve's.</summary>
internal static class BareFigures
{
    /// <summary>A single bare duration up to this is counted at .050 (common practice, no source); a longer one may be either.</summary>
    private const double SurelyAt050CrankDeg = 250;

    /// <summary>A single bare lift up to this is the lobe's (common practice, no source); from the other on it must be the valve's.</summary>
    private const double SurelyLobeIn = .4, SurelyValveIn = .7;

    private static readonly Kinds Duration = new(LobeField.At050, LobeField.Advertised, (small, large) => large - small is >= 15 and <= 110);
    private static readonly Kinds Lift = new(LobeField.LobeLift, LobeField.ValveLift, (small, large) => large / small is >= 1.25 and <= 2.3);

    public static void Settle(EntryDraft draft)
    {
        Settle(draft, draft.Durations, Duration, value => value <= SurelyAt050CrankDeg ? LobeField.At050 : null,
            "Is the duration of {0} counted at .050, or is it the advertised one?", EntrySay.Crank);
        Settle(draft, draft.Lifts, Lift, value => value <= SurelyLobeIn ? LobeField.LobeLift : value > SurelyValveIn ? LobeField.ValveLift : null,
            "Is the lift of {0} at the lobe or at the valve?", EntrySay.In);
    }

    private static void Settle(EntryDraft draft, List<BarePair> pairs, Kinds kinds, Func<double, LobeField?> alone, string question, Func<double, string> say)
    {
        foreach (var bare in pairs)
        {
            if (ByTheOthers(draft.Spec, bare, pairs, kinds) is { } known)
                draft.TakeLobes(bare.From, bare.To, known, bare.Pair);
            else if (!IsKnown(draft.Spec, bare, kinds) && alone(bare.Value) is { } sure)
                draft.TakeLobes(bare.From, bare.To, sure, bare.Pair);
            else
                draft.Doubt(bare.From, bare.To, string.Format(null, question, say(bare.Value)));
        }
    }

    private static bool IsKnown(CamSpec spec, BarePair bare, Kinds kinds) =>
        (bare.Pair.Lobe == Lobe.Exhaust ? spec.Exhaust : spec.Intake) is var lobe && (kinds.Small.Get(lobe) ?? kinds.Large.Get(lobe)) is not null;

    private static LobeField? ByTheOthers(CamSpec spec, BarePair bare, List<BarePair> pairs, Kinds kinds)
    {
        var lobe = bare.Pair.Lobe == Lobe.Exhaust ? spec.Exhaust : spec.Intake;
        if (kinds.Small.Get(lobe) is { } small && kinds.GoTogether(small, bare.Value))
            return kinds.Large;
        if (kinds.Large.Get(lobe) is { } large && kinds.GoTogether(bare.Value, large))
            return kinds.Small;
        var others = pairs.Where(other => other != bare && other.Pair.Lobe == bare.Pair.Lobe).ToList();
        return others is not [var only] ? null
            : kinds.GoTogether(only.Value, bare.Value) ? kinds.Large
            : kinds.GoTogether(bare.Value, only.Value) ? kinds.Small
            : null;
    }

    private sealed record Kinds(LobeField Small, LobeField Large, Func<double, double, bool> GoTogether);
}
