using System.Text.Json;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders.Finding;

/// <summary>
/// Finds orders, open and closed, by anything known of them: customer, address, phone in any spelling, numbers, parts, lots, and every word of
/// specification, questions, mails and history.
/// </summary>
public sealed class OrderSearch(IDbContextFactory<ShopDb> factory)
{
    public const int PageLength = 20;

    /// <summary>How alike a name must be to count as nearly spelled so, from 0 to 1 (share of common groups of three letters).</summary>
    private const string LeastLikeness = "0.5";

    /// <summary>The best first: what is written so before what is only nearly spelled so, names and numbers before words, then the newest.</summary>
    public async Task<FoundPage> FindAsync(string? text, int page = 1, CancellationToken cancel = default)
    {
        var question = OrderQuestion.Of(text);
        if (question.IsTooShort || page < 1)
            return FoundPage.Nothing;
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        await db.Database.ExecuteSqlAsync($"SELECT set_config('pg_trgm.word_similarity_threshold', {LeastLikeness}, true)", cancel);
        var rows = await db.Database.SqlQuery<Row>(Sql(question, page)).ToListAsync(cancel);
        if (rows.Count == 0)
            return page > 1 ? await FindAsync(text, 1, cancel) : FoundPage.Nothing;
        return new FoundPage(rows[0].Total, page, [.. rows.OrderBy(row => row.Place).Select(row => Found(row, question))]);
    }

    /// <summary>The statement behind it; every value is a parameter.</summary>
    public static FormattableString Sql(OrderQuestion question, int page) => $"""
        WITH term AS MATERIALIZED (
            SELECT ordinal, asked, to_tsquery('simple', words) AS words, part, '%' || phone || '%' AS phone, '%' || phone AS phone_end, near
            FROM unnest({Of(question, term => term.Ordinal)}, {Of(question, term => term.Text)}, {Of(question, term => term.Words)}, {Of(question, term => term.Part)}, {Of(question, term => term.Phone)}, {Of(question, term => term.Near)})
                AS t (ordinal, asked, words, part, phone, near)
        ),
        hit AS MATERIALIZED (
            SELECT t.ordinal, w.id, w.order_id, w.customer_id, w.weight * CASE WHEN lower(w.words) = lower(t.asked) THEN 3 ELSE 1 END AS rank FROM term t JOIN known_words w ON w.document @@ t.words
            UNION ALL SELECT t.ordinal, w.id, w.order_id, w.customer_id, w.weight * 0.7 FROM term t JOIN known_words w ON w.words ILIKE t.part WHERE w.is_name
            UNION ALL SELECT t.ordinal, w.id, w.order_id, w.customer_id, w.weight * CASE WHEN w.digits LIKE t.phone_end THEN 1.5 ELSE 0.6 END FROM term t JOIN known_words w ON w.digits LIKE t.phone WHERE w.digits IS NOT NULL
            UNION ALL SELECT t.ordinal, w.id, w.order_id, w.customer_id, w.weight * 0.4 * word_similarity(t.near, w.words) FROM term t JOIN known_words w ON t.near <% w.words WHERE w.is_name
        ),
        of_order AS MATERIALIZED (
            SELECT order_id, ordinal, id, rank FROM hit WHERE order_id IS NOT NULL
            UNION ALL SELECT o.id, hit.ordinal, hit.id, hit.rank FROM hit JOIN orders o ON o.customer_id = hit.customer_id
        ),
        best AS (SELECT order_id, ordinal, max(rank) AS rank FROM of_order GROUP BY order_id, ordinal),
        found AS (SELECT order_id, sum(rank) AS rank FROM best GROUP BY order_id HAVING count(*) FILTER (WHERE ordinal > 0) = {question.Words} OR bool_or(ordinal = 0)),
        ranked AS (SELECT order_id, row_number() OVER (ORDER BY rank DESC, order_id DESC)::integer AS place, count(*) OVER ()::integer AS total FROM found),
        page AS (SELECT * FROM ranked WHERE place > {(page - 1) * PageLength} AND place <= {page * PageLength}),
        why AS (
            SELECT order_id, json_agg(json_build_object('place', place, 'words', words, 'isName', is_name) ORDER BY rank DESC, id) AS hits FROM (SELECT *, row_number() OVER (PARTITION BY order_id ORDER BY rank DESC, id) AS nth FROM (
                SELECT DISTINCT ON (h.order_id, w.place, lower(w.words)) h.order_id, w.id, w.place, w.words, w.is_name, h.rank
                FROM of_order h JOIN page ON page.order_id = h.order_id JOIN known_words w ON w.id = h.id ORDER BY h.order_id, w.place, lower(w.words), h.rank DESC) one) numbered
            WHERE nth <= {MostHits} GROUP BY order_id
        )
        SELECT o.number, o.state, o.state_since, c.name AS customer, o.received_at, page.place, page.total, why.hits
        FROM page JOIN why ON why.order_id = page.order_id JOIN orders o ON o.id = page.order_id JOIN customers c ON c.id = o.customer_id
        """;

    private static T[] Of<T>(OrderQuestion question, Func<AskedTerm, T> form) => [.. question.Terms.Select(form)];

    private const int MostHits = 3;

    private static FoundOrder Found(Row row, OrderQuestion question)
    {
        var hits = JsonSerializer.Deserialize<IReadOnlyList<HitRow>>(row.Hits, ShopJson.Options)!;
        return new FoundOrder(row.Number, Enum.Parse<OrderState>(row.State), row.StateSince, row.Customer, row.ReceivedAt,
            [.. hits.Select(hit => new Hit(hit.Place, HitMarks.Of(hit.Words, question.Terms, hit.IsName)))]);
    }

    internal sealed record Row(string Number, string State, DateTimeOffset StateSince, string Customer, DateTimeOffset ReceivedAt, int Place, int Total, string Hits);

    internal sealed record HitRow(string Place, string Words, bool IsName);
}
