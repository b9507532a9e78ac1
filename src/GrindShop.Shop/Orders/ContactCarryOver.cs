using Microsoft.EntityFrameworkCore.Migrations;

namespace GrindShop.Shop.Orders;

/// <summary>Until the order itself had to say how its customer is reached, the customer did: an order without gets the customer's own address.</summary>
internal static class ContactCarryOver
{
    public static void FromCustomers(MigrationBuilder migration) => migration.Sql("""
        UPDATE orders o SET contact = o.contact || jsonb_strip_nulls(jsonb_build_object('email', c.email, 'phone', c.phone))
        FROM customers c
        WHERE c.id = o.customer_id AND coalesce(btrim(o.contact->>'email'), '') = '' AND coalesce(btrim(o.contact->>'phone'), '') = '';
        """);
}
