using GrindShop.Shop;
using GrindShop.Shop.Drafts;

namespace GrindShop.Web.Public;

/// <summary>Keeps a form's texts with the shop, one keeping at a time. Another device's changes stop it until somebody has chosen.</summary>
public sealed class DraftKeeper(DraftBook book, TimeProvider clock)
{
    private bool _busy, _again;

    /// <summary>The other device's draft, while it is to be chosen between the two.</summary>
    public KeptDraft? Other { get; private set; }

    /// <summary>Why the texts are not kept.</summary>
    public Refusal? Trouble { get; private set; }

    public DateTimeOffset? KeptAt { get; private set; }

    /// <summary>Keeps what stands there now; true with the texts that were kept, if any.</summary>
    public async Task<IReadOnlyDictionary<string, string>?> KeepAsync(SpecFormState state)
    {
        _again = true;
        if (_busy)
            return null;
        _busy = true;
        IReadOnlyDictionary<string, string>? kept = null;
        try
        {
            while (_again && Other is null)
            {
                _again = false;
                kept = await KeepOnceAsync(state) ?? kept;
            }
        }
        finally
        {
            _busy = false;
        }
        return kept;
    }

    /// <summary>This device's texts win: they are kept over the other's.</summary>
    public Task<IReadOnlyDictionary<string, string>?> KeepMineAsync(SpecFormState state)
    {
        (state.Revision, Other) = (Other!.Revision, null);
        return KeepAsync(state);
    }

    public void TakeTheirs(SpecFormState state)
    {
        state.GoOn(Other!);
        Other = null;
    }

    private async Task<IReadOnlyDictionary<string, string>?> KeepOnceAsync(SpecFormState state)
    {
        var texts = new Dictionary<string, string>(state.Texts);
        if (state.Code is null && texts.Values.All(string.IsNullOrWhiteSpace))
            return null;
        var outcome = state.Code is { } code ? await book.KeepAsync(code, state.Revision, texts) : await book.BeginAsync(state.SubmitKey, texts);
        Trouble = outcome.Refusal;
        if (outcome.Value is { } draft)
        {
            (state.Code, state.Revision, KeptAt) = (draft.Code, draft.Revision, clock.GetUtcNow());
            return texts;
        }
        await AskAsync(state, outcome.Refusal!);
        return null;
    }

    private async Task AskAsync(SpecFormState state, Refusal refusal)
    {
        if (refusal.IsStale)
            Other = await book.FindAsync(state.Code!);
        if (refusal.Code == "gone")
            state.Code = null;
    }
}
