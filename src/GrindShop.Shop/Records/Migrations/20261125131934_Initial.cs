using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace GrindShop.Shop.Records.Migrations
{
    /// <inheritdoc />
    public partial class Initial : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateSequence(
                name: "order_numbers",
                startValue: 1001L);

            migrationBuilder.CreateTable(
                name: "AspNetRoles",
                columns: table => new
                {
                    id = table.Column<string>(type: "text", nullable: false),
                    name = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    normalized_name = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    concurrency_stamp = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_asp_net_roles", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "AspNetUsers",
                columns: table => new
                {
                    id = table.Column<string>(type: "text", nullable: false),
                    display_name = table.Column<string>(type: "text", nullable: false),
                    user_name = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    normalized_user_name = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    email = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    normalized_email = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    email_confirmed = table.Column<bool>(type: "boolean", nullable: false),
                    password_hash = table.Column<string>(type: "text", nullable: true),
                    security_stamp = table.Column<string>(type: "text", nullable: true),
                    concurrency_stamp = table.Column<string>(type: "text", nullable: true),
                    phone_number = table.Column<string>(type: "text", nullable: true),
                    phone_number_confirmed = table.Column<bool>(type: "boolean", nullable: false),
                    two_factor_enabled = table.Column<bool>(type: "boolean", nullable: false),
                    lockout_end = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    lockout_enabled = table.Column<bool>(type: "boolean", nullable: false),
                    access_failed_count = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_asp_net_users", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "customers",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    name = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    email = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    phone = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: true),
                    since = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_customers", x => x.id);
                    table.CheckConstraint("ck_customers_reachable", "email IS NOT NULL OR phone IS NOT NULL");
                });

            migrationBuilder.CreateTable(
                name: "data_protection_keys",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    friendly_name = table.Column<string>(type: "text", nullable: true),
                    xml = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_data_protection_keys", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "engine_families",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    code = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    name = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    kind = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    cylinders = table.Column<int>(type: "integer", nullable: false),
                    firing_order = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: false),
                    other_firing_orders = table.Column<string[]>(type: "text[]", nullable: false),
                    firing_intervals_crank_deg = table.Column<double[]>(type: "double precision[]", nullable: false),
                    bank_angle_deg = table.Column<double>(type: "double precision", nullable: false),
                    lifter_bank_angle_deg = table.Column<double>(type: "double precision", nullable: false),
                    bank_of_cylinder = table.Column<int[]>(type: "integer[]", nullable: false),
                    valve_order = table.Column<string>(type: "text", nullable: false),
                    has_sides = table.Column<bool>(type: "boolean", nullable: false),
                    rotation = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    datum = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    datum_angle_cam_deg = table.Column<double>(type: "double precision", nullable: false),
                    gear = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    journal_diameters_in = table.Column<double[]>(type: "double precision[]", nullable: false),
                    nose_passes_bores = table.Column<bool>(type: "boolean", nullable: false),
                    nose_clearance_in = table.Column<double>(type: "double precision", nullable: false),
                    least_base_circle_in = table.Column<double>(type: "double precision", nullable: false),
                    usual_base_circle_in = table.Column<double>(type: "double precision", nullable: false),
                    rocker_ratio = table.Column<double>(type: "double precision", nullable: false),
                    roller_diameter_in = table.Column<double>(type: "double precision", nullable: false),
                    foot_diameter_in = table.Column<double>(type: "double precision", nullable: false),
                    lobe_width_in = table.Column<double>(type: "double precision", nullable: false),
                    usual_lobe_separation_cam_deg = table.Column<double>(type: "double precision", nullable: false),
                    usual_advance_crank_deg = table.Column<double>(type: "double precision", nullable: false),
                    fuel_pump_lobe = table.Column<bool>(type: "boolean", nullable: false),
                    notes = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_engine_families", x => x.id);
                    table.CheckConstraint("ck_engine_families_cylinders", "cylinders BETWEEN 1 AND 16");
                });

            migrationBuilder.CreateTable(
                name: "gear_rules",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    cam_gear = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    distributor_gear = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    verdict = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    reason = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_gear_rules", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "lifter_rules",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    alloy = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    lifter = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    verdict = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    reason = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_lifter_rules", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "price_adders",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    code = table.Column<string>(type: "text", nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    amount = table.Column<decimal>(type: "numeric(10,2)", precision: 10, scale: 2, nullable: false),
                    when = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_price_adders", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "settings",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false),
                    shop_name = table.Column<string>(type: "text", nullable: false),
                    address = table.Column<string>(type: "text", nullable: false),
                    phone = table.Column<string>(type: "text", nullable: false),
                    email = table.Column<string>(type: "text", nullable: false),
                    time_zone = table.Column<string>(type: "text", nullable: false),
                    cleanup_in = table.Column<double>(type: "double precision", nullable: false),
                    least_induction_case_in = table.Column<double>(type: "double precision", nullable: false),
                    least_carburized_case_in = table.Column<double>(type: "double precision", nullable: false),
                    usual_grind_days = table.Column<int>(type: "integer", nullable: false),
                    heat_treat_extra_days = table.Column<int>(type: "integer", nullable: false),
                    blank_markup = table.Column<decimal>(type: "numeric(10,2)", precision: 10, scale: 2, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_settings", x => x.id);
                    table.CheckConstraint("ck_settings_one_row", "id = 1");
                });

            migrationBuilder.CreateTable(
                name: "vendors",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    code = table.Column<string>(type: "text", nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    kind = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    lead_time_days = table.Column<int>(type: "integer", nullable: false),
                    process = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_vendors", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "AspNetRoleClaims",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    role_id = table.Column<string>(type: "text", nullable: false),
                    claim_type = table.Column<string>(type: "text", nullable: true),
                    claim_value = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_asp_net_role_claims", x => x.id);
                    table.ForeignKey(
                        name: "fk_asp_net_role_claims_asp_net_roles_role_id",
                        column: x => x.role_id,
                        principalTable: "AspNetRoles",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "AspNetUserClaims",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    user_id = table.Column<string>(type: "text", nullable: false),
                    claim_type = table.Column<string>(type: "text", nullable: true),
                    claim_value = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_asp_net_user_claims", x => x.id);
                    table.ForeignKey(
                        name: "fk_asp_net_user_claims_asp_net_users_user_id",
                        column: x => x.user_id,
                        principalTable: "AspNetUsers",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "AspNetUserLogins",
                columns: table => new
                {
                    login_provider = table.Column<string>(type: "text", nullable: false),
                    provider_key = table.Column<string>(type: "text", nullable: false),
                    provider_display_name = table.Column<string>(type: "text", nullable: true),
                    user_id = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_asp_net_user_logins", x => new { x.login_provider, x.provider_key });
                    table.ForeignKey(
                        name: "fk_asp_net_user_logins_asp_net_users_user_id",
                        column: x => x.user_id,
                        principalTable: "AspNetUsers",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "AspNetUserRoles",
                columns: table => new
                {
                    user_id = table.Column<string>(type: "text", nullable: false),
                    role_id = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_asp_net_user_roles", x => new { x.user_id, x.role_id });
                    table.ForeignKey(
                        name: "fk_asp_net_user_roles_asp_net_roles_role_id",
                        column: x => x.role_id,
                        principalTable: "AspNetRoles",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_asp_net_user_roles_asp_net_users_user_id",
                        column: x => x.user_id,
                        principalTable: "AspNetUsers",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "AspNetUserTokens",
                columns: table => new
                {
                    user_id = table.Column<string>(type: "text", nullable: false),
                    login_provider = table.Column<string>(type: "text", nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    value = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_asp_net_user_tokens", x => new { x.user_id, x.login_provider, x.name });
                    table.ForeignKey(
                        name: "fk_asp_net_user_tokens_asp_net_users_user_id",
                        column: x => x.user_id,
                        principalTable: "AspNetUsers",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "orders",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    number = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    tracking_code = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    submit_key = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    submit_digest = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    channel = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    state = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    customer_id = table.Column<int>(type: "integer", nullable: false),
                    contact = table.Column<string>(type: "jsonb", nullable: false),
                    customer_reference = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: true),
                    spec = table.Column<string>(type: "jsonb", nullable: false),
                    answer = table.Column<string>(type: "jsonb", nullable: true),
                    verdict = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: true),
                    quoted_part_number = table.Column<string>(type: "text", nullable: true),
                    price_lines = table.Column<string>(type: "jsonb", nullable: false),
                    price = table.Column<decimal>(type: "numeric(10,2)", precision: 10, scale: 2, nullable: false),
                    promised_on = table.Column<DateOnly>(type: "date", nullable: true),
                    received_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    changes = table.Column<int>(type: "integer", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_orders", x => x.id);
                    table.CheckConstraint("ck_orders_price", "price >= 0");
                    table.CheckConstraint("ck_orders_promise", "state NOT IN ('Accepted', 'InWork', 'Shipped') OR promised_on IS NOT NULL");
                    table.ForeignKey(
                        name: "fk_orders_customers_customer_id",
                        column: x => x.customer_id,
                        principalTable: "customers",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "base_prices",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    engine_family_id = table.Column<int>(type: "integer", nullable: false),
                    lifter = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    amount = table.Column<decimal>(type: "numeric(10,2)", precision: 10, scale: 2, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_base_prices", x => x.id);
                    table.CheckConstraint("ck_base_prices_amount", "amount > 0");
                    table.ForeignKey(
                        name: "fk_base_prices_engine_families_engine_family_id",
                        column: x => x.engine_family_id,
                        principalTable: "engine_families",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "blank_parts",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    part_number = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    engine_family_id = table.Column<int>(type: "integer", nullable: false),
                    form = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    alloy = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    hardening = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    case_depth_in = table.Column<double>(type: "double precision", nullable: true),
                    hardness_hrc = table.Column<double>(type: "double precision", nullable: true),
                    gear = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    side = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: true),
                    nominal = table.Column<string>(type: "jsonb", nullable: true),
                    round_diameter_in = table.Column<double>(type: "double precision", nullable: true),
                    firing_order = table.Column<string>(type: "text", nullable: false),
                    least_base_circle_in = table.Column<double>(type: "double precision", nullable: false),
                    supplier_id = table.Column<int>(type: "integer", nullable: false),
                    cost = table.Column<decimal>(type: "numeric(10,2)", precision: 10, scale: 2, nullable: false),
                    lead_time_days = table.Column<int>(type: "integer", nullable: false),
                    notes = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_blank_parts", x => x.id);
                    table.CheckConstraint("ck_blank_parts_case", "(hardening IN ('Induction', 'Carburized')) = (case_depth_in IS NOT NULL)");
                    table.CheckConstraint("ck_blank_parts_cost", "cost >= 0 AND lead_time_days >= 0");
                    table.CheckConstraint("ck_blank_parts_shape", "(form = 'FullRound') = (nominal IS NULL) AND (form = 'FullRound') = (round_diameter_in IS NOT NULL)");
                    table.ForeignKey(
                        name: "fk_blank_parts_engine_family_engine_family_id",
                        column: x => x.engine_family_id,
                        principalTable: "engine_families",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_blank_parts_vendor_supplier_id",
                        column: x => x.supplier_id,
                        principalTable: "vendors",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "order_events",
                columns: table => new
                {
                    id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    order_id = table.Column<int>(type: "integer", nullable: false),
                    kind = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    what = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_order_events", x => x.id);
                    table.ForeignKey(
                        name: "fk_order_events_order_order_id",
                        column: x => x.order_id,
                        principalTable: "orders",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "blank_lots",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    lot_number = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    blank_part_id = table.Column<int>(type: "integer", nullable: false),
                    location = table.Column<string>(type: "text", nullable: false),
                    received_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    on_hand = table.Column<int>(type: "integer", nullable: false),
                    allocated = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_blank_lots", x => x.id);
                    table.CheckConstraint("ck_blank_lots_stock", "on_hand >= 0 AND allocated BETWEEN 0 AND on_hand");
                    table.ForeignKey(
                        name: "fk_blank_lots_blank_part_blank_part_id",
                        column: x => x.blank_part_id,
                        principalTable: "blank_parts",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "jobs",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    code = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    order_id = table.Column<int>(type: "integer", nullable: false),
                    blank_lot_id = table.Column<int>(type: "integer", nullable: false),
                    due_on = table.Column<DateOnly>(type: "date", nullable: false),
                    opened_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    shipped_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    steps_done = table.Column<int>(type: "integer", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_jobs", x => x.id);
                    table.ForeignKey(
                        name: "fk_jobs_blank_lots_blank_lot_id",
                        column: x => x.blank_lot_id,
                        principalTable: "blank_lots",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_jobs_orders_order_id",
                        column: x => x.order_id,
                        principalTable: "orders",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "stock_movements",
                columns: table => new
                {
                    id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    blank_lot_id = table.Column<int>(type: "integer", nullable: false),
                    kind = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    on_hand_change = table.Column<int>(type: "integer", nullable: false),
                    allocated_change = table.Column<int>(type: "integer", nullable: false),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    reason = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_stock_movements", x => x.id);
                    table.ForeignKey(
                        name: "fk_stock_movements_blank_lots_blank_lot_id",
                        column: x => x.blank_lot_id,
                        principalTable: "blank_lots",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "job_events",
                columns: table => new
                {
                    id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    job_id = table.Column<int>(type: "integer", nullable: false),
                    what = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    stage = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: true),
                    by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    why = table.Column<string>(type: "text", nullable: false),
                    command_key = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_job_events", x => x.id);
                    table.ForeignKey(
                        name: "fk_job_events_job_job_id",
                        column: x => x.job_id,
                        principalTable: "jobs",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "job_steps",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    job_id = table.Column<int>(type: "integer", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    stage = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    vendor_id = table.Column<int>(type: "integer", nullable: true),
                    done_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    done_by = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_job_steps", x => x.id);
                    table.CheckConstraint("ck_job_steps_done", "(done_at IS NULL) = (done_by IS NULL)");
                    table.ForeignKey(
                        name: "fk_job_steps_job_job_id",
                        column: x => x.job_id,
                        principalTable: "jobs",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_job_steps_vendors_vendor_id",
                        column: x => x.vendor_id,
                        principalTable: "vendors",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_asp_net_role_claims_role_id",
                table: "AspNetRoleClaims",
                column: "role_id");

            migrationBuilder.CreateIndex(
                name: "RoleNameIndex",
                table: "AspNetRoles",
                column: "normalized_name",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_asp_net_user_claims_user_id",
                table: "AspNetUserClaims",
                column: "user_id");

            migrationBuilder.CreateIndex(
                name: "ix_asp_net_user_logins_user_id",
                table: "AspNetUserLogins",
                column: "user_id");

            migrationBuilder.CreateIndex(
                name: "ix_asp_net_user_roles_role_id",
                table: "AspNetUserRoles",
                column: "role_id");

            migrationBuilder.CreateIndex(
                name: "EmailIndex",
                table: "AspNetUsers",
                column: "normalized_email");

            migrationBuilder.CreateIndex(
                name: "UserNameIndex",
                table: "AspNetUsers",
                column: "normalized_user_name",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_base_prices_engine_family_id_lifter",
                table: "base_prices",
                columns: new[] { "engine_family_id", "lifter" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_blank_lots_blank_part_id",
                table: "blank_lots",
                column: "blank_part_id");

            migrationBuilder.CreateIndex(
                name: "ix_blank_lots_lot_number",
                table: "blank_lots",
                column: "lot_number",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_blank_parts_engine_family_id",
                table: "blank_parts",
                column: "engine_family_id");

            migrationBuilder.CreateIndex(
                name: "ix_blank_parts_part_number",
                table: "blank_parts",
                column: "part_number",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_blank_parts_supplier_id",
                table: "blank_parts",
                column: "supplier_id");

            migrationBuilder.CreateIndex(
                name: "ix_customers_email",
                table: "customers",
                column: "email",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_customers_phone",
                table: "customers",
                column: "phone");

            migrationBuilder.CreateIndex(
                name: "ix_engine_families_code",
                table: "engine_families",
                column: "code",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_gear_rules_cam_gear_distributor_gear",
                table: "gear_rules",
                columns: new[] { "cam_gear", "distributor_gear" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_job_events_job_id_command_key",
                table: "job_events",
                columns: new[] { "job_id", "command_key" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_job_steps_job_id_ordinal",
                table: "job_steps",
                columns: new[] { "job_id", "ordinal" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_job_steps_job_id_stage",
                table: "job_steps",
                columns: new[] { "job_id", "stage" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_job_steps_vendor_id",
                table: "job_steps",
                column: "vendor_id");

            migrationBuilder.CreateIndex(
                name: "ix_jobs_blank_lot_id",
                table: "jobs",
                column: "blank_lot_id");

            migrationBuilder.CreateIndex(
                name: "ix_jobs_code",
                table: "jobs",
                column: "code",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_jobs_order_id",
                table: "jobs",
                column: "order_id");

            migrationBuilder.CreateIndex(
                name: "ix_lifter_rules_alloy_lifter",
                table: "lifter_rules",
                columns: new[] { "alloy", "lifter" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_order_events_order_id",
                table: "order_events",
                column: "order_id");

            migrationBuilder.CreateIndex(
                name: "ix_orders_customer_id",
                table: "orders",
                column: "customer_id");

            migrationBuilder.CreateIndex(
                name: "ix_orders_number",
                table: "orders",
                column: "number",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_orders_state",
                table: "orders",
                column: "state");

            migrationBuilder.CreateIndex(
                name: "ix_orders_submit_key",
                table: "orders",
                column: "submit_key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_orders_tracking_code",
                table: "orders",
                column: "tracking_code",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_price_adders_code",
                table: "price_adders",
                column: "code",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_stock_movements_blank_lot_id",
                table: "stock_movements",
                column: "blank_lot_id");

            migrationBuilder.CreateIndex(
                name: "ix_vendors_code",
                table: "vendors",
                column: "code",
                unique: true);

            AppendOnly.Protect(migrationBuilder, "order_events", "job_events", "stock_movements");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "AspNetRoleClaims");

            migrationBuilder.DropTable(
                name: "AspNetUserClaims");

            migrationBuilder.DropTable(
                name: "AspNetUserLogins");

            migrationBuilder.DropTable(
                name: "AspNetUserRoles");

            migrationBuilder.DropTable(
                name: "AspNetUserTokens");

            migrationBuilder.DropTable(
                name: "base_prices");

            migrationBuilder.DropTable(
                name: "data_protection_keys");

            migrationBuilder.DropTable(
                name: "gear_rules");

            migrationBuilder.DropTable(
                name: "job_events");

            migrationBuilder.DropTable(
                name: "job_steps");

            migrationBuilder.DropTable(
                name: "lifter_rules");

            migrationBuilder.DropTable(
                name: "order_events");

            migrationBuilder.DropTable(
                name: "price_adders");

            migrationBuilder.DropTable(
                name: "settings");

            migrationBuilder.DropTable(
                name: "stock_movements");

            migrationBuilder.DropTable(
                name: "AspNetRoles");

            migrationBuilder.DropTable(
                name: "AspNetUsers");

            migrationBuilder.DropTable(
                name: "jobs");

            migrationBuilder.DropTable(
                name: "blank_lots");

            migrationBuilder.DropTable(
                name: "orders");

            migrationBuilder.DropTable(
                name: "blank_parts");

            migrationBuilder.DropTable(
                name: "customers");

            migrationBuilder.DropTable(
                name: "engine_families");

            migrationBuilder.DropTable(
                name: "vendors");

            migrationBuilder.DropSequence(
                name: "order_numbers");
        }
    }
}
