using System.Globalization;

namespace GrindShop.Shop.Orders.Finding;

/// <summary>A table whose rows tell something of an order or a customer.</summary>
/// <param name="When">The changes after which its words are taken anew.</param>
/// <param name="Words">Of its row r: order, customer (one of them null), place, weight, words.</param>
internal sealed record WordSource(string Table, string When, string Words);

/// <summary>Where the words that search knows come from, and how much a hit in each place counts.</summary>
internal static class WordSources
{
    /// <summary>From this weight on a place holds names and numbers: also a part of one is found, and one that is nearly spelled so.</summary>
    public const double NameWeight = .8;

    private const double Number = 1, Contact = .95, Address = .85, Part = .8, Spec = .5, Asked = .45, Said = .4, Written = .2;

    public static readonly IReadOnlyList<WordSource> All =
    [
        new("orders", "INSERT OR UPDATE OF number, contact, customer_reference", $"""
            SELECT r.id, NULL::integer, k.place, k.weight, k.words FROM (VALUES
                ('order', {In(Number)}, r.number),
                ('customer', {In(Contact)}, r.contact->>'name'), ('e-mail', {In(Address)}, r.contact->>'email'), ('phone', {In(Contact)}, r.contact->>'phone'),
                ('their reference', {In(Address)}, r.customer_reference)) AS k (place, weight, words)
            """),
        new("customers", "INSERT OR UPDATE OF name, email, phone", $"""
            SELECT NULL::integer, r.id, k.place, k.weight, k.words FROM (VALUES
                ('customer', {In(Contact)}, r.name), ('e-mail', {In(Address)}, r.email), ('phone', {In(Contact)}, r.phone)) AS k (place, weight, words)
            """),
        new("quotes", "INSERT", Of("r.order_id", "quote", Part, "r.number")),
        new("jobs", "INSERT OR UPDATE OF code, blank_lot_id", $"""
            SELECT r.order_id, NULL::integer, k.place, {In(Part)}, k.words FROM (VALUES ('job', r.code),
                ('lot', (SELECT l.lot_number FROM blank_lots l WHERE l.id = r.blank_lot_id)),
                ('blank', (SELECT p.part_number FROM blank_lots l JOIN blank_parts p ON p.id = l.blank_part_id WHERE l.id = r.blank_lot_id))) AS k (place, words)
            """),
        new("order_cams", "INSERT OR DELETE OR UPDATE OF kind, spec, received_condition, gear, quoted_part_number", $"""
            SELECT r.order_id, NULL::integer, k.place, k.weight, k.words FROM (VALUES
                ('blank', {In(Part)}, r.quoted_part_number),
                ('specification', {In(Spec)}, concat_ws(' ', {SpecWords}, (SELECT f.name FROM engine_families f WHERE f.code = r.spec->>'engineFamily'))),
                ('work', {In(Spec)}, {Cut("r.kind")}), ('marks', {In(Part)}, r.gear->>'marks'),
                ('notes', {In(Spec)}, r.spec->>'notes'), ('condition', {In(Spec)}, r.received_condition)) AS k (place, weight, words)
            """),
        new("order_events", "INSERT", Of("r.order_id", "history", Said, "r.what")),
        new("order_questions", "INSERT", Of("r.order_id", "question", Asked, "r.text")),
        new("order_replies", "INSERT", Of("(SELECT q.order_id FROM order_questions q WHERE q.id = r.question_id)", "answer", Asked, "concat_ws(' ', r.value, r.words)")),
        new("deposits", "INSERT", Of("r.order_id", "payment", Said, "r.note")),
        new("job_events", "INSERT", Of("(SELECT j.order_id FROM jobs j WHERE j.id = r.job_id)", "floor", Said, "r.why")),
        Letters,
    ];

    /// <summary>Letters to customers; what is written to vendors is of no order.</summary>
    public static WordSource Letters => new("outgoing_mails", "INSERT", Of("(SELECT o.id FROM orders o WHERE o.number = r.order_number)", "letter", Written, "CASE WHEN r.order_number IS NOT NULL THEN concat_ws(' ', r.subject, r.text) END"));

    /// <summary>Numbers to be called back, and letters that came in: followed since there are any.</summary>
    public static readonly IReadOnlyList<WordSource> Later =
    [
        new("order_calls", "INSERT", Of("r.order_id", "phone", Contact, "r.number")),
        new("incoming_mails", "INSERT OR UPDATE OF order_number", $"SELECT o.id, NULL::integer, 'letter', {In(Said)}, concat_ws(' ', r.from_name, r.subject, r.text) FROM orders o WHERE o.number = r.order_number"),
    ];

    /// <summary>All values of the specification but the notes; names such as hydraulicRoller are cut into their words.</summary>
    private static string SpecWords => $"""
        (SELECT string_agg({Cut("v.value #>> '{}'")}, ' ')
            FROM jsonb_path_query(r.spec - 'notes', '$.**') AS v (value) WHERE jsonb_typeof(v.value) IN ('string', 'number'))
        """;

    private static string Cut(string name) => $@"regexp_replace({name}, '([a-z])([A-Z])', '\1 \2', 'g')";

    private static string Of(string order, string place, double weight, string words) => $"SELECT {order}, NULL::integer, '{place}', {In(weight)}, {words}";

    private static string In(double weight) => weight.ToString(CultureInfo.InvariantCulture);
}
