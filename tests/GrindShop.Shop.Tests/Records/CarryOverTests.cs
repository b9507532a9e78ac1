using GrindShop.Shop.Blanks;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace GrindShop.Shop.Tests.Records;

/// <summary>What stood in the database before a migration still stands there after it.</summary>
public class CarryOverTests
{
    private const string OneOrderOfBefore = """
        INSERT INTO customers (id, name, phone, since) VALUES (7, 'Una Thornquist', '555 555 0142', now());
        INSERT INTO orders (id, number, tracking_code, submit_key, submit_digest, channel, state, customer_id, contact, spec, verdict, quoted_part_number, price_lines, price, received_at, changes)
        VALUES (7, 'C1007', 'TRACK', 'key', 'digest', 'Web', 'Quoted', 7, '{}', '{"use":"street"}', 'FromStock', 'RV8R-AD-05', '[{"code":"base","text":"Grinding","amount":300.00},{"code":"blank","text":"Blank","amount":112.50}]', 412.50, '2026-03-01T09:00Z', 2);
        INSERT INTO order_events (order_id, kind, by, at, what) VALUES (7, 'Received', 'Una', '2026-03-01T09:00Z', 'Received.'), (7, 'Quoted', 'Petra', '2026-03-03T09:00Z', 'Priced.');
        """;

    /// <summary>A blank, its supplier, and a lot of six of which one was set aside and one ground, as they stood before jobs, pump lobes and sources had columns.</summary>
    private const string OneShelfOfBefore = """
        INSERT INTO vendors (id, code, name, kind, lead_time_days, process) VALUES (5, 'MILL', 'Some Mill', 'BlankSupplier', 30, '');
        INSERT INTO engine_families (id, code, name, kind, cylinders, firing_order, other_firing_orders, firing_intervals_crank_deg, bank_angle_deg, lifter_bank_angle_deg, bank_of_cylinder, valve_order, has_sides, rotation,
            datum, datum_angle_cam_deg, gear, journal_diameters_in, nose_passes_bores, nose_clearance_in, least_base_circle_in, usual_base_circle_in, rocker_ratio, roller_diameter_in, foot_diameter_in, lobe_width_in,
            usual_lobe_separation_cam_deg, usual_advance_crank_deg, fuel_pump_lobe, notes)
        VALUES (3, 'I4', 'In-line four', 'PushrodInline', 4, '1-3-4-2', '{}', '{}', 0, 0, '{0,0,0,0}', '1E 1I 2I 2E 3E 3I 4I 4E', false, 'Clockwise', 'Dowel', 0, 'Rear', '{1.5,1.5,1.5}', true, 0.01, 0.9, 1.1, 1.5, 0.75, 0.842, 0.5, 110, 4, true, '');
        INSERT INTO blank_parts (id, part_number, engine_family_id, form, alloy, hardening, case_depth_in, hardness_hrc, gear, nominal, round_diameter_in, firing_order, least_base_circle_in, supplier_id, cost, lead_time_days, notes)
        VALUES (9, 'OLD-1', 3, 'FullRound', 'Steel5160', 'Induction', 0.2, 58, 'Steel', NULL, 1.6, '1-3-4-2', 0.95, 5, 120.50, 30, 'as it was');
        INSERT INTO blank_lots (id, lot_number, blank_part_id, location, received_at, on_hand, allocated) VALUES (4, 'L4', 9, 'A1', '2026-02-01T09:00Z', 5, 1);
        INSERT INTO stock_movements (blank_lot_id, kind, on_hand_change, allocated_change, by, at, reason) VALUES
            (4, 'Receipt', 6, 0, 'Petra', '2026-02-01T09:00Z', 'received'), (4, 'Allocate', 0, 1, 'Petra', '2026-02-02T09:00Z', 'for J1007'),
            (4, 'Consume', -1, -1, 'Rolf', '2026-02-03T09:00Z', 'ground as J1007'), (4, 'Allocate', 0, 1, 'Petra', '2026-02-04T09:00Z', 'for J1008');
        """;

    /// <summary>How the blank was sold, and a purchase order of ten of which four have come, as they stood before the part knew its least quantity.</summary>
    private const string OnePurchaseOfBefore = """
        INSERT INTO supply_terms (blank_part_id, least_quantity, multiple, setup_charge, price_breaks, service_level) VALUES (9, 8, 2, 75.00, '[{"fromQuantity":20,"unitPrice":110.00}]', 0.9);
        INSERT INTO purchase_orders (id, number, vendor_id, state, drafted_at, sent_at, command_key, changes) VALUES (6, 'PO-1006', 5, 'PartlyReceived', '2026-01-02T09:00Z', '2026-01-03T09:00Z', 'old', 2);
        INSERT INTO purchase_lines (id, purchase_order_id, ordinal, blank_part_id, quantity, unit_cost, setup_charge, first_expected_on, expected_on, received) VALUES (8, 6, 1, 9, 10, 115.00, 75.00, '2026-02-01', '2026-02-15', 4);
        INSERT INTO blank_lots (id, lot_number, blank_part_id, location, received_at, on_hand, allocated, purchase_line) VALUES (5, 'L5', 9, 'A2', '2026-02-05T09:00Z', 4, 0, 'PO-1006');
        INSERT INTO stock_movements (blank_lot_id, kind, on_hand_change, allocated_change, by, at, reason) VALUES (5, 'Receipt', 4, 0, 'Petra', '2026-02-05T09:00Z', 'received on PO-1006');
        INSERT INTO purchase_receipts (purchase_line_id, blank_lot_id, quantity, by, at, key) VALUES (8, 5, 4, 'Petra', '2026-02-05T09:00Z', 'd1');
        INSERT INTO purchase_events (purchase_order_id, kind, by, at, what) VALUES (6, 'Drafted', 'Petra', '2026-01-02T09:00Z', 'Drafted.'), (6, 'Sent', 'Petra', '2026-01-03T09:00Z', 'Sent.');
        """;

    private static readonly TemplateDatabase Initial = new("initial", async connection =>
    {
        await using var db = Db(connection);
        await db.GetService<IMigrator>().MigrateAsync("Initial");
        await Sql.RunAsync(connection, OneOrderOfBefore);
        await Sql.RunAsync(connection, OneShelfOfBefore);
    });

    [Fact]
    public async Task Order_of_one_cam_keeps_its_specification_verdict_blank_and_age()
    {
        await using var database = await Initial.CopyAsync();
        await using var db = Db(database.ConnectionString);

        await db.Database.MigrateAsync();

        var order = await db.Set<Shop.Orders.Order>().Include(one => one.Quotes).SingleAsync();
        Assert.Equal(("street", Shop.Feasibility.Verdict.FromStock, "RV8R-AD-05"), (order.First.Spec.Use, order.First.Verdict!.Value, order.First.QuotedPartNumber));
        var quote = order.CurrentQuote!;
        Assert.Equal(("Q1007-1", "Petra", 412.50m), (quote.Number, quote.By, quote.Total));
        Assert.Equal(412.50m, quote.Charged.Sum(line => line.Amount));
        Assert.All(quote.Lines, line => Assert.False(line.NeedsReason));
        Assert.Equal("RV8R-AD-05", Assert.Single(quote.Cams).PartNumber);
        Assert.Equal("555 555 0142", order.Contact.Phone);
        Assert.Equal((1, 412.50m, new DateTimeOffset(2026, 3, 3, 9, 0, 0, TimeSpan.Zero)), (order.First.Quantity, order.Price, order.StateSince));
    }

    [Theory]
    [InlineData("0142", "phone")]
    [InlineData("priced", "history")]
    [InlineData("rv8r-ad", "blank")]
    public async Task Order_from_before_there_was_a_search_is_found(string question, string place)
    {
        await using var database = await Initial.CopyAsync();
        await using (var db = Db(database.ConnectionString))
            await db.Database.MigrateAsync();
        await using var shop = new TestShop(database);

        var found = Assert.Single((await shop.Search.FindAsync(question)).Orders);

        Assert.Equal(("C1007", place), (found.Number, found.Why[0].Place));
    }

    [Fact]
    public async Task Blanks_lots_their_books_terms_and_purchase_orders_are_what_they_were()
    {
        await using var database = await Initial.CopyAsync();
        await using (var half = Db(database.ConnectionString))
            await half.GetService<IMigrator>().MigrateAsync("Buying");
        await Sql.RunAsync(database.ConnectionString, OnePurchaseOfBefore);
        await using var db = Db(database.ConnectionString);

        await db.Database.MigrateAsync();

        var part = await db.WholeParts().SingleAsync();
        Assert.Equal(("OLD-1", 120.50m, 30, 8, true, "as it was"), (part.PartNumber, part.Cost, part.LeadTimeDays, part.LeastQuantity, part.FuelPumpLobe, part.Notes));
        Assert.Equal(("MILL", "", 0), (part.Supplier.Code, part.SupplierPart, part.OtherSources.Count));
        Assert.Equal(("", 0, null, 0), (part.DriveEnd, part.JournalDiametersIn.Length, part.Supersedes, part.Alternates.Length));

        var terms = await db.SupplyTerms.SingleAsync();
        Assert.Equal((5, 8, 2, 75m, .9, 110m), (terms.SupplierId, terms.LeastQuantity, terms.Multiple, terms.SetupCharge, terms.ServiceLevel, terms.UnitPrice(20)));

        var lots = await db.WholeLots().OrderBy(lot => lot.Id).ToListAsync();
        Assert.Equal([(5, 1, false, "J1008"), (4, 0, false, "")], lots.Select(lot => (lot.OnHand, lot.Allocated, lot.IsQuarantined, string.Join(' ', lot.HeldBy))));
        Assert.Equal([null, "J1007", "J1007", "J1008"], lots[0].Movements.Select(line => line.JobCode));
        var sums = StockSums.Of(lots);
        Assert.Equal((9, 1, 8), (sums.OnHand, sums.Allocated, sums.Available));

        var purchase = await db.WholePurchases().SingleAsync();
        Assert.Equal(("PO-1006", PurchaseState.PartlyReceived, 6, "L5", 2), (purchase.Number, purchase.State, purchase.Lines[0].Missing, purchase.Lines[0].Receipts[0].BlankLot.LotNumber, purchase.History.Count));
        Assert.Equal(6, (await db.OnOrderAsync(default))[part.Id]);
    }

    private static ShopDb Db(string connection) => new(new DbContextOptionsBuilder<ShopDb>().UseShop(connection).Options);
}
