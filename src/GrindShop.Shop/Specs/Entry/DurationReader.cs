namespace GrindShop.Shop.Specs.Entry;

/// <summary>Durations: 230/236 @.050, duration at .050: 230, 280/286 adv, 290 @.020 and bare ones.</summary>
internal static class DurationReader
{
    private const double Least = 130, Most = 460, MostBare = 340;

    public static int Read(EntryDraft draft, int at)
    {
        var text = draft.Text;
        var label = DurationLabel.At(text, at);
        var start = text.Join(label.Next);
        if (label.IsAny && label.CheckIn is not null && !IsDuration(Pair.At(text, start)))
            return AdvertisedAtAlone(draft, at, label);
        if (Pair.At(text, start) is not { } pair || !IsDuration(pair))
            return 0;
        var behind = DurationLabel.At(text, pair.Next);
        if (behind.IsAny && (text[pair.Next].OpensLine || (BelongsToNext(label, behind) && IsDuration(Pair.At(text, text.Join(behind.Next))))))
            behind = DurationLabel.None(pair.Next);
        if (!label.IsAny && !behind.IsAny && (pair.First.Value > MostBare || LiftLabel.At(text, pair.Next).IsAny))
            return 0;
        return Take(draft, at, draft.Context.Place(pair), label.With(behind)) - at;
    }

    /// <summary>Where labels stand before their figures they do so throughout; a check lift belongs to the figures before it unless they have one.</summary>
    private static bool BelongsToNext(DurationLabel label, DurationLabel behind) => label.IsAny && (behind.CheckIn is null || label.CheckIn is not null);

    private static int Take(EntryDraft draft, int from, Pair pair, DurationLabel label)
    {
        var to = Math.Max(pair.Next, label.Next);
        if (label.CheckIn is { } check)
            TakeAt(draft, from, to, pair, check);
        else if (label.IsAdvertised)
            draft.TakeLobes(from, to, LobeField.Advertised, pair);
        else
            draft.Durations.Add(new BarePair(from, to, pair));
        return to;
    }

    private static void TakeAt(EntryDraft draft, int from, int to, Pair pair, double check)
    {
        if (check == .05)
        {
            draft.TakeLobes(from, to, LobeField.At050, pair);
            return;
        }
        if (!draft.TakeLobes(from, to, LobeField.Advertised, pair))
            return;
        var lobes = draft.Parts[^1].Fields.Select(field => field.Split('.')[0]).ToList();
        draft.SetAdvertisedAt(lobes.Contains("intake") ? check : null, lobes.Contains("exhaust") ? check : null);
        draft.Parts[^1] = draft.Parts[^1] with
        {
            Words = $"{draft.Parts[^1].Words}, counted at {EntrySay.In(check)}",
            Fields = [.. draft.Parts[^1].Fields, .. lobes.Select(lobe => $"{lobe}.{LobeField.AdvertisedAt.Name}")],
        };
    }

    private static void SetAdvertisedAt(this EntryDraft draft, double? intake, double? exhaust) => draft.Spec = draft.Spec with
    {
        Intake = draft.Spec.Intake with { AdvertisedAtIn = intake ?? draft.Spec.Intake.AdvertisedAtIn },
        Exhaust = draft.Spec.Exhaust with { AdvertisedAtIn = exhaust ?? draft.Spec.Exhaust.AdvertisedAtIn },
    };

    /// <summary>"advertised at .006", the durations said elsewhere.</summary>
    private static int AdvertisedAtAlone(EntryDraft draft, int at, DurationLabel label)
    {
        if (!label.IsAdvertised || label.CheckIn is not { } check || check == .05)
            return 0;
        var pair = new Pair(new Figure(check, false, label.Next), null, Lobe.Unsaid, label.Next);
        return draft.TakeLobes(at, label.Next, LobeField.AdvertisedAt, draft.Context.Place(pair)) ? label.Next - at : 0;
    }

    private static bool IsDuration(Pair? pair) => pair is { First: { IsWhole: true } or { Value: >= Least } } known && known.First.Within(Least, Most) && known.Second is null or { Value: >= Least and <= Most };
}
