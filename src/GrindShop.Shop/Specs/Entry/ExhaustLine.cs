namespace GrindShop.Shop.Specs.Entry;

/// <summary>The exhaust centreline gives the separation or the intake centreline: LSA = (ICL + ECL) / 2.</summary>
internal static class ExhaustLine
{
    public static void Settle(EntryDraft draft, int from, int to, double ecl)
    {
        var spec = draft.Spec;
        if (spec is { IntakeCenterlineCrankDeg: { } icl, LobeSeparationCamDeg: null })
            Take(draft, from, to, CamField.Separation, (icl + ecl) / 2, ecl);
        else if (spec is { LobeSeparationCamDeg: { } lsa, IntakeCenterlineCrankDeg: null })
            Take(draft, from, to, CamField.IntakeCenterline, 2 * lsa - ecl, ecl);
        else if (spec is { LobeSeparationCamDeg: { } separation, IntakeCenterlineCrankDeg: { } intake } && Math.Abs((intake + ecl) / 2 - separation) <= .25)
            draft.Take(from, to, $"exhaust centreline {EntrySay.Crank(ecl)}, as lobe separation and intake centreline have it", CamField.Separation.Path);
        else
            draft.Doubt(from, to, spec.LobeSeparationCamDeg is null
                ? $"The exhaust centreline is {EntrySay.Crank(ecl)}. Where is the intake centreline?"
                : $"An exhaust centreline of {EntrySay.Crank(ecl)} does not go with the lobe separation and intake centreline given. Which two of the three are right?");
    }

    private static void Take(EntryDraft draft, int from, int to, CamField field, double value, double ecl)
    {
        draft.Spec = field.Set(draft.Spec, value);
        draft.Take(from, to, $"exhaust centreline {EntrySay.Crank(ecl)}: {field.Words} {field.Say(value)}", field.Path);
    }
}
