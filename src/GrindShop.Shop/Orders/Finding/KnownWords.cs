using Microsoft.EntityFrameworkCore.Migrations;

namespace GrindShop.Shop.Orders.Finding;

/// <summary>
/// What search reads: every name, number and word known of an order or its customer, each with the place it comes from. The database keeps it itself,
/// in the transaction that writes the source, whoever writes. It needs the extension pg_trgm, which every usual PostgreSQL package brings and the
/// database's owner may switch on.
/// </summary>
internal static class KnownWords
{
    public static void Create(MigrationBuilder migration)
    {
        migration.Sql(Extension);
        migration.Sql(Table);
        foreach (var source in WordSources.All)
            Follow(migration, source);
    }

    public static void Drop(MigrationBuilder migration)
    {
        foreach (var source in WordSources.All)
            Unfollow(migration, source);
        migration.Sql("DROP TABLE known_words;");
    }

    public static void FollowLater(MigrationBuilder migration) => WordSources.Later.ToList().ForEach(source => Follow(migration, source));

    public static void UnfollowLater(MigrationBuilder migration) => WordSources.Later.ToList().ForEach(source => Unfollow(migration, source));

    /// <summary>The words of a row are replaced whenever it changes; what is there already is taken in now.</summary>
    private static void Follow(MigrationBuilder migration, WordSource source)
    {
        Change(migration, source);
        migration.Sql($"CREATE TRIGGER {source.Table}_known_words AFTER {source.When} ON {source.Table} FOR EACH ROW EXECUTE FUNCTION {source.Table}_known_words();");
        migration.Sql(Take(source, source.Table));
    }

    /// <summary>Other words are taken of the rows that are written from now on.</summary>
    public static void Change(MigrationBuilder migration, WordSource source) =>
        migration.Sql($"""
            CREATE OR REPLACE FUNCTION {source.Table}_known_words() RETURNS trigger LANGUAGE plpgsql AS $$
            BEGIN
                IF TG_OP <> 'INSERT' THEN
                    DELETE FROM known_words WHERE source = '{source.Table}' AND source_id = OLD.id;
                END IF;
                IF TG_OP <> 'DELETE' THEN
                    {Take(source, "(SELECT NEW.*)")}
                END IF;
                RETURN NULL;
            END $$;
            """);

    private static void Unfollow(MigrationBuilder migration, WordSource source)
    {
        migration.Sql($"DROP FUNCTION {source.Table}_known_words() CASCADE;");
        migration.Sql($"DELETE FROM known_words WHERE source = '{source.Table}';");
    }

    private static string Take(WordSource source, string rows) => $"""
        INSERT INTO known_words (source, source_id, order_id, customer_id, place, weight, is_name, words)
        SELECT '{source.Table}', r.id, k.order_id, k.customer_id, k.place, k.weight, k.weight >= {WordSources.NameWeight}, left(k.words, 100000)
        FROM {rows} AS r CROSS JOIN LATERAL ({source.Words}) AS k (order_id, customer_id, place, weight, words) WHERE k.words <> '';
        """;

    private const string Extension = """
        DO $$
        BEGIN
            CREATE EXTENSION IF NOT EXISTS pg_trgm;
        EXCEPTION WHEN OTHERS THEN
            RAISE EXCEPTION 'The search needs PostgreSQL''s extension pg_trgm: % Install the server''s contrib package, and let the database''s owner or a superuser run CREATE EXTENSION pg_trgm.', SQLERRM;
        END $$;
        """;

    /// <summary>
    /// Words are cut at every sign that is neither letter nor digit, so that .335, RV8R-516-08 and an address are found by their pieces. Few rows are written
    /// and many searches run: without the list of pending entries (fastupdate) the planner sees what an index really costs.
    /// </summary>
    private const string Table = """
        CREATE TABLE known_words (
            id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
            source text NOT NULL,
            source_id bigint NOT NULL,
            order_id integer REFERENCES orders (id) ON DELETE CASCADE,
            customer_id integer REFERENCES customers (id) ON DELETE CASCADE,
            place text NOT NULL,
            weight real NOT NULL,
            is_name boolean NOT NULL,
            words text NOT NULL,
            digits text GENERATED ALWAYS AS (CASE WHEN place = 'phone' THEN regexp_replace(words, '[^0-9]', '', 'g') END) STORED,
            document tsvector NOT NULL GENERATED ALWAYS AS (to_tsvector('simple', regexp_replace(words, '[^[:alnum:]]+', ' ', 'g'))) STORED,
            CONSTRAINT ck_known_words_of_one CHECK ((order_id IS NULL) <> (customer_id IS NULL))
        );
        CREATE INDEX ix_known_words_source ON known_words (source, source_id);
        CREATE INDEX ix_known_words_order_id ON known_words (order_id);
        CREATE INDEX ix_known_words_customer_id ON known_words (customer_id);
        CREATE INDEX ix_known_words_document ON known_words USING gin (document) WITH (fastupdate = off);
        CREATE INDEX ix_known_words_names ON known_words USING gin (words gin_trgm_ops) WITH (fastupdate = off) WHERE is_name;
        CREATE INDEX ix_known_words_digits ON known_words USING gin (digits gin_trgm_ops) WITH (fastupdate = off) WHERE digits IS NOT NULL;
        """;
}
