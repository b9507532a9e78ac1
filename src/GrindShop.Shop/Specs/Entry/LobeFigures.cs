namespace GrindShop.Shop.Specs.Entry;

/// <summary>Puts a figure where it belongs: into the intake lobe, the exhaust lobe, or both.</summary>
internal static class LobeFigures
{
    /// <summary>False where the figure stands against an earlier one; it is then doubted and left in the notes.</summary>
    public static bool TakeLobes(this EntryDraft draft, int from, int to, LobeField field, Pair pair)
    {
        if (pair.Second is { } second)
            return draft.Put(from, to, field, value(pair.First), value(second));
        return Place(draft, from, to, field, value(pair.First), pair) == Lobe.Exhaust
            ? draft.Put(from, to, field, null, value(pair.First))
            : draft.Put(from, to, field, value(pair.First), null);

        double value(Figure figure) => IsLength(field) ? figure.LengthIn : figure.Value;
    }

    private static bool IsLength(LobeField field) => field.Name.EndsWith("In", StringComparison.Ordinal);

    private static Lobe Place(EntryDraft draft, int from, int to, LobeField field, double value, Pair pair)
    {
        var (intake, exhaust) = (field.Get(draft.Spec.Intake), field.Get(draft.Spec.Exhaust));
        if (pair is { Lobe: not Lobe.Unsaid, IsSure: true })
            return pair.Lobe;
        if (pair.Lobe == Lobe.Exhaust && intake is null)
        {
            draft.Doubt(from, to, $"Is the {field.Words} of {field.Say(value)} for both lobes, or for the exhaust alone? It is taken for both.");
            return Lobe.Intake;
        }
        if (pair.Lobe != Lobe.Unsaid || intake is not { } first || first == value || exhaust is not null)
            return pair.Lobe;
        draft.Doubt(from, to, $"Is the {field.Words} {field.Say(first)} on the intake and {field.Say(value)} on the exhaust? It is taken so.");
        return Lobe.Exhaust;
    }

    private static bool Put(this EntryDraft draft, int from, int to, LobeField field, double? intake, double? exhaust)
    {
        var spec = draft.Spec;
        if ((Against(field, spec.Intake, intake) ?? Against(field, spec.Exhaust, exhaust)) is not null)
        {
            draft.Doubt(from, to, $"Two figures were given for the {field.Words}: {Words(field, field.Get(spec.Intake), field.Get(spec.Exhaust))}; and {Words(field, intake, exhaust)}. Which is right?");
            return false;
        }
        draft.Spec = spec with
        {
            Intake = intake is { } i ? field.Set(spec.Intake, i) : spec.Intake,
            Exhaust = exhaust is { } e ? field.Set(spec.Exhaust, e) : spec.Exhaust,
        };
        draft.Take(from, to, $"{field.Words}: {Words(field, intake, exhaust)}", [.. Paths(field, intake, exhaust)]);
        return true;
    }

    private static double? Against(LobeField field, LobeWish lobe, double? value) => value is not null && field.Get(lobe) is { } there && there != value ? there : null;

    private static string Words(LobeField field, double? intake, double? exhaust) =>
        string.Join(", ", new[] { intake is { } i ? $"intake {field.Say(i)}" : null, exhaust is { } e ? $"exhaust {field.Say(e)}" : null }.OfType<string>());

    private static IEnumerable<string> Paths(LobeField field, double? intake, double? exhaust)
    {
        if (intake is not null)
            yield return $"intake.{field.Name}";
        if (exhaust is not null)
            yield return $"exhaust.{field.Name}";
    }
}
