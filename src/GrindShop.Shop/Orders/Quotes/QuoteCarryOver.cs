using Microsoft.EntityFrameworkCore.Migrations;

namespace GrindShop.Shop.Orders;

/// <summary>Prices of the time when an order kept only its newest: each becomes the order's first quote, valid as long as usual from its day, and where it still waits for an answer a fortnight at least.</summary>
internal static class QuoteCarryOver
{
    public static void FromOrders(MigrationBuilder migration)
    {
        migration.Sql("""
            INSERT INTO quotes (order_id, number, by, at, valid_until, lines, cams, total)
            SELECT o.id, 'Q' || substr(o.number, 2) || '-1', e.by, e.at, greatest((e.at + interval '30 days')::date, CASE WHEN o.state = 'Quoted' THEN current_date + 14 END),
                   (SELECT jsonb_agg(line || jsonb_build_object('cam', 1, 'why', '', 'isStruck', false, 'ruleAmount', line -> 'amount')) FROM jsonb_array_elements(o.price_lines) line),
                   (SELECT jsonb_agg(jsonb_strip_nulls(jsonb_build_object('ordinal', c.ordinal, 'kind', 'newGrind', 'quantity', c.quantity, 'spec', c.spec, 'grind', c.answer -> 'grind',
                        'partNumber', c.quoted_part_number,
                        'verdict', lower(left(c.verdict, 1)) || substr(c.verdict, 2),
                        'fit', (SELECT b FROM jsonb_array_elements(c.answer -> 'blanks') b WHERE b ->> 'partNumber' = c.quoted_part_number LIMIT 1))))
                    FROM order_cams c WHERE c.order_id = o.id),
                   o.price
            FROM orders o
            CROSS JOIN LATERAL (SELECT * FROM order_events x WHERE x.order_id = o.id AND x.kind = 'Quoted' ORDER BY x.id DESC LIMIT 1) e
            WHERE o.price > 0 AND jsonb_array_length(o.price_lines) > 0;
            """);
        migration.Sql("UPDATE orders o SET current_quote_number = q.number, quotes_made = 1 FROM quotes q WHERE q.order_id = o.id;");
        migration.Sql("UPDATE orders o SET accepted_by = c.name FROM customers c WHERE c.id = o.customer_id AND o.state IN ('Accepted', 'InWork', 'Shipped');");
    }

    public static void ToOrders(MigrationBuilder migration) =>
        migration.Sql("UPDATE orders o SET price_lines = q.lines FROM quotes q WHERE q.number = o.current_quote_number;");
}
