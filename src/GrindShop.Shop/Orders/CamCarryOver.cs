using Microsoft.EntityFrameworkCore.Migrations;

namespace GrindShop.Shop.Orders;

/// <summary>Orders of the time when an order was one cam: each keeps it as its first, and its job becomes that cam's.</summary>
internal static class CamCarryOver
{
    public static void FromOrders(MigrationBuilder migration)
    {
        migration.Sql("""
            INSERT INTO order_cams (order_id, ordinal, kind, quantity, spec, answer, verdict, quoted_part_number, started, shipped)
            SELECT o.id, 1, 'NewGrind', 1, o.spec, o.answer, o.verdict, o.quoted_part_number,
                   (SELECT count(*) FROM jobs j WHERE j.order_id = o.id), (SELECT count(*) FROM jobs j WHERE j.order_id = o.id AND j.shipped_at IS NOT NULL)
            FROM orders o;
            """);
        migration.Sql("UPDATE jobs j SET order_cam_id = c.id FROM order_cams c WHERE c.order_id = j.order_id;");
        migration.Sql("""
            UPDATE orders o SET
                jobs_opened = (SELECT count(*) FROM jobs j WHERE j.order_id = o.id),
                state_since = COALESCE((SELECT max(e.at) FROM order_events e WHERE e.order_id = o.id), o.received_at);
            """);
    }

    public static void ToOrders(MigrationBuilder migration) => migration.Sql("""
        UPDATE orders o SET spec = c.spec, answer = c.answer, verdict = c.verdict, quoted_part_number = c.quoted_part_number
        FROM order_cams c WHERE c.order_id = o.id AND c.ordinal = 1;
        """);
}
