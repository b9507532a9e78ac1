using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Drafts;

/// <summary>Keeps begun forms. A saving that knows nothing of another device's is refused, so that neither loses anything unseen.</summary>
public sealed class DraftBook(IDbContextFactory<ShopDb> factory, TimeProvider clock)
{
    /// <summary>Null where there is none: never begun, sent already, or too old.</summary>
    public async Task<KeptDraft?> FindAsync(string code, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var since = clock.GetUtcNow() - KeptDraft.Life;
        return await db.KeptDrafts.AsNoTracking().SingleOrDefaultAsync(draft => draft.Code == code && draft.ChangedAt > since, cancel);
    }

    /// <summary>Begins a draft, or goes on with the one that this key has begun already.</summary>
    public async Task<Outcome<KeptDraft>> BeginAsync(string submitKey, IReadOnlyDictionary<string, string> texts, CancellationToken cancel = default)
    {
        if (KeptDraft.Refuse(texts) is { } refusal)
            return refusal;
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await db.KeptDrafts.AsNoTracking().SingleOrDefaultAsync(draft => draft.SubmitKey == submitKey, cancel) is { } begun)
            return begun;
        var draft = KeptDraft.Begin(submitKey, texts, clock.GetUtcNow());
        db.Add(draft);
        return await db.TrySaveAsync(cancel) ? draft : await db.KeptDrafts.AsNoTracking().SingleAsync(other => other.SubmitKey == submitKey, cancel);
    }

    /// <param name="basedOn">The revision that was read and typed on.</param>
    public async Task<Outcome<KeptDraft>> KeepAsync(string code, int basedOn, IReadOnlyDictionary<string, string> texts, CancellationToken cancel = default)
    {
        if (KeptDraft.Refuse(texts) is { } refusal)
            return refusal;
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await db.KeptDrafts.SingleOrDefaultAsync(draft => draft.Code == code, cancel) is not { } draft)
            return new Refusal("gone", "This draft has been sent or ended on another device.");
        if (draft.Revision != basedOn)
            return Stale;
        draft.Keep(texts, clock.GetUtcNow());
        return await db.TrySaveAsync(cancel) ? draft : Stale;
    }

    /// <summary>Sent, or not wanted any more: nothing of it stays.</summary>
    public async Task EndAsync(string code, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await db.KeptDrafts.Where(draft => draft.Code == code).ExecuteDeleteAsync(cancel);
    }

    /// <summary>Deletes what nobody has touched for longer than a draft lives; how many.</summary>
    public async Task<int> ClearOldAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var since = clock.GetUtcNow() - KeptDraft.Life;
        return await db.KeptDrafts.Where(draft => draft.ChangedAt <= since).ExecuteDeleteAsync(cancel);
    }

    private static Refusal Stale => new("stale", "This draft was changed on another device in the meantime.");
}
