using Microsoft.EntityFrameworkCore.Migrations;

namespace GrindShop.Shop.Orders.Finding;

/// <summary>
/// The table that search reads: one row an order with everything that is known of it, kept by the database itself whoever writes. It needs the
/// extension pg_trgm, which every usual PostgreSQL package brings and the database's owner may switch on.
/// </summary>
internal static class OrderSearchTable
{
    private static readonly string[] Followed = ["order_cams", "order_events", "quotes", "jobs"];

    public static void Create(MigrationBuilder migration)
    {
        migration.Sql(Extension);
        migration.Sql(Table);
        migration.Sql(Refresh);
        migration.Sql(Follow);
        Trigger(migration, "orders", "INSERT OR UPDATE OF number, customer_id, contact, customer_reference");
        Trigger(migration, "customers", "UPDATE OF name, phone");
        Trigger(migration, "job_events", "INSERT");
        foreach (var table in Followed)
            Trigger(migration, table, "INSERT OR UPDATE");
        migration.Sql("SELECT refresh_order_search(id) FROM orders;");
    }

    public static void Drop(MigrationBuilder migration)
    {
        migration.Sql("DROP FUNCTION order_search_follows() CASCADE;");
        migration.Sql("DROP FUNCTION refresh_order_search(integer);");
        migration.Sql("DROP TABLE order_search;");
    }

    private static void Trigger(MigrationBuilder migration, string table, string when) =>
        migration.Sql($"CREATE TRIGGER {table}_search AFTER {when} ON {table} FOR EACH ROW EXECUTE FUNCTION order_search_follows();");

    private const string Extension = """
        DO $$
        BEGIN
            CREATE EXTENSION IF NOT EXISTS pg_trgm;
        EXCEPTION WHEN OTHERS THEN
            RAISE EXCEPTION 'The search needs PostgreSQL''s extension pg_trgm: % Install the server''s contrib package, and let the database''s owner or a superuser run CREATE EXTENSION pg_trgm.', SQLERRM;
        END $$;
        """;

    private const string Table = """
        CREATE TABLE order_search (
            order_id integer PRIMARY KEY REFERENCES orders (id) ON DELETE CASCADE,
            head text NOT NULL,
            body text NOT NULL,
            digits text NOT NULL,
            document tsvector NOT NULL GENERATED ALWAYS AS (setweight(to_tsvector('simple', head), 'A') || setweight(to_tsvector('simple', body), 'C')) STORED
        );
        CREATE INDEX ix_order_search_document ON order_search USING gin (document);
        CREATE INDEX ix_order_search_head ON order_search USING gin (head gin_trgm_ops);
        CREATE INDEX ix_order_search_digits ON order_search USING gin (digits gin_trgm_ops);
        """;

    /// <summary>Names and numbers make the head, words of specification and history the body; phone numbers are kept as bare digits too.</summary>
    private const string Refresh = """
        CREATE FUNCTION refresh_order_search(wanted integer) RETURNS void LANGUAGE sql AS $$
            INSERT INTO order_search (order_id, head, body, digits)
            SELECT o.id,
                concat_ws(' ', o.number, c.name, c.email, c.phone, o.contact->>'name', o.contact->>'email', o.contact->>'phone', o.customer_reference,
                    (SELECT string_agg(q.number, ' ') FROM quotes q WHERE q.order_id = o.id),
                    (SELECT string_agg(concat_ws(' ', j.code, l.lot_number, p.part_number), ' ')
                        FROM jobs j JOIN blank_lots l ON l.id = j.blank_lot_id JOIN blank_parts p ON p.id = l.blank_part_id WHERE j.order_id = o.id),
                    (SELECT string_agg(k.quoted_part_number, ' ') FROM order_cams k WHERE k.order_id = o.id)),
                left(concat_ws(' ',
                    (SELECT string_agg(concat_ws(' ', k.received_condition,
                            (SELECT string_agg(regexp_replace(v.value #>> '{}', '([a-z])([A-Z])', '\1 \2', 'g'), ' ')
                                FROM jsonb_path_query(k.spec, '$.**') AS v (value) WHERE jsonb_typeof(v.value) IN ('string', 'number'))), ' ')
                        FROM order_cams k WHERE k.order_id = o.id),
                    (SELECT string_agg(e.what, ' ' ORDER BY e.id) FROM order_events e WHERE e.order_id = o.id),
                    (SELECT string_agg(e.what, ' ' ORDER BY e.id) FROM job_events e JOIN jobs j ON j.id = e.job_id WHERE j.order_id = o.id)), 100000),
                concat_ws(' ', regexp_replace(c.phone, '[^0-9]', '', 'g'), regexp_replace(o.contact->>'phone', '[^0-9]', '', 'g'))
            FROM orders o JOIN customers c ON c.id = o.customer_id
            WHERE o.id = wanted
            ON CONFLICT (order_id) DO UPDATE SET head = EXCLUDED.head, body = EXCLUDED.body, digits = EXCLUDED.digits
        $$;
        """;

    private const string Follow = """
        CREATE FUNCTION order_search_follows() RETURNS trigger LANGUAGE plpgsql AS $$
        BEGIN
            IF TG_TABLE_NAME = 'orders' THEN
                PERFORM refresh_order_search(NEW.id);
            ELSIF TG_TABLE_NAME = 'customers' THEN
                PERFORM refresh_order_search(o.id) FROM orders o WHERE o.customer_id = NEW.id ORDER BY o.id;
            ELSIF TG_TABLE_NAME = 'job_events' THEN
                PERFORM refresh_order_search(j.order_id) FROM jobs j WHERE j.id = NEW.job_id;
            ELSE
                PERFORM refresh_order_search(NEW.order_id);
            END IF;
            RETURN NULL;
        END $$;
        """;
}
