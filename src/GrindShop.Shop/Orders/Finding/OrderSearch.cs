using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders.Finding;

/// <summary>An order that was found.</summary>
/// <param name="Excerpt">The words around the hit, cut into pieces.</param>
public sealed record FoundOrder(string Number, OrderState State, string Customer, DateTimeOffset ReceivedAt, IReadOnlyList<ExcerptPiece> Excerpt);

public sealed record ExcerptPiece(string Text, bool IsHit);

/// <summary>Finds orders by anything known of them: customer, address, phone in any spelling, numbers, parts, lots, and every word of specification and history.</summary>
public sealed class OrderSearch(IDbContextFactory<ShopDb> factory)
{
    public const int MostFound = 50, LongestQuestion = 200;

    private const int LeastDigits = 4, LeastLetters = 2;

    /// <summary>Signs that no text of the shop has, about each hit.</summary>
    private const char HitStarts = '\ue000', HitEnds = '\ue001';

    private static readonly string Excerpts = $"MaxFragments=2,MaxWords=14,MinWords=5,StartSel={HitStarts},StopSel={HitEnds}";

    /// <summary>The best first; words that are nearly spelled so come after those that are.</summary>
    public async Task<IReadOnlyList<FoundOrder>> FindAsync(string? question, CancellationToken cancel = default)
    {
        var asked = Clean(question);
        if (asked.Length < LeastLetters)
            return [];
        await using var db = await factory.CreateDbContextAsync(cancel);
        var rows = await db.Database.SqlQuery<Row>(Sql(asked, Phone(asked), $"%{Pattern(asked)}%")).ToListAsync(cancel);
        return [.. rows.OrderByDescending(row => row.Rank).Select(row => new FoundOrder(row.Number, Enum.Parse<OrderState>(row.State), row.Customer, row.Received, [.. Pieces(row.Excerpt)]))];
    }

    /// <summary>The statement behind it; every value is a parameter.</summary>
    public static FormattableString Sql(string asked, string? phone, string part) => $"""
        WITH asked AS MATERIALIZED (SELECT websearch_to_tsquery('simple', {asked}) AS words),
        hits AS (
            SELECT order_id, 2 + ts_rank(document, websearch_to_tsquery('simple', {asked})) AS rank FROM order_search WHERE document @@ websearch_to_tsquery('simple', {asked})
            UNION ALL SELECT order_id, 3 FROM order_search WHERE digits LIKE {phone}
            UNION ALL SELECT order_id, 1.5 FROM order_search WHERE head ILIKE {part}
            UNION ALL SELECT order_id, word_similarity({asked}, head) FROM order_search WHERE {asked} <% head
        ),
        best AS (SELECT order_id, max(rank) AS rank FROM hits GROUP BY order_id ORDER BY 2 DESC, 1 DESC LIMIT {MostFound})
        SELECT o.number, o.state, c.name AS customer, o.received_at AS received, best.rank::double precision AS rank,
            ts_headline('simple', s.head || ' · ' || s.body, asked.words, {Excerpts}) AS excerpt
        FROM best JOIN order_search s USING (order_id) JOIN orders o ON o.id = best.order_id JOIN customers c ON c.id = o.customer_id CROSS JOIN asked
        """;

    /// <summary>Short enough, and without signs that the database takes for none of its letters.</summary>
    private static string Clean(string? question) =>
        new string([.. (question ?? "").Take(LongestQuestion).Where(letter => !char.IsControl(letter) && !char.IsSurrogate(letter))]).Trim();

    /// <summary>A phone number or the end of one: digits and the signs between them.</summary>
    private static string? Phone(string asked) =>
        !asked.Any(char.IsLetter) && CallerBook.Digits(asked) is { Length: >= LeastDigits } digits ? $"%{digits}%" : null;

    internal static string Pattern(string text) => text.Replace(@"\", @"\\").Replace("%", @"\%").Replace("_", @"\_");

    private static IEnumerable<ExcerptPiece> Pieces(string excerpt)
    {
        foreach (var piece in excerpt.Split(HitStarts))
        {
            var end = piece.IndexOf(HitEnds, StringComparison.Ordinal);
            if (end >= 0)
                yield return new ExcerptPiece(piece[..end], true);
            if (piece.Length > end + 1)
                yield return new ExcerptPiece(piece[(end + 1)..], false);
        }
    }

    internal sealed record Row(string Number, string State, string Customer, DateTimeOffset Received, double Rank, string Excerpt);
}
