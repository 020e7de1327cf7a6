"""The first schema: everything from the booking to the paid bill.

Revision 0001, the first.
"""

from collections.abc import Sequence
from fractions import Fraction

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
MOMENT = sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")
DAY = sa.Date().with_variant(sa.Text(), "sqlite")
FLAG = sa.Boolean().with_variant(sa.Integer(), "sqlite")

# Whole nanograms in one unit: 1 lb = 0.45359237 kg exactly (NIST Handbook 44, appendix C).
UNITS = {
    "lb": 453_592_370_000,
    "oz": 28_349_523_125,
    "kg": 1_000_000_000_000,
    "g": 1_000_000_000,
}
SERIES = ("lot", "order", "label", "bill", "credit", "receipt")
LOCKED = (
    "weighings",
    "measurements",
    "order_changes",
    "papers",
    "sheets",
    "sheet_orders",
    "sheet_acknowledgements",
    "bills",
    "bill_lines",
    "divisions",
    "payments",
    "changes",
    "charges",
)
# Rows of which only the columns named may still be written, and that are never deleted.
LOCKED_BUT = {
    "packages": ("void", "voided_at", "voided_by"),
    "losses": ("void",),
    "rate_cards": ("retired",),
}


def step(name: str, unit: str, exponent: int) -> str:
    ratio = UNITS[unit] * Fraction(10) ** exponent
    if ratio.denominator == 1:
        return f"{name}_count * {ratio.numerator}"
    low = ratio.denominator
    return f"CASE {name}_count % {low} WHEN 0 THEN {name}_count / {low} * {ratio.numerator} END"


def nanograms(name: str) -> sa.Computed:
    """The generated column beside the three of a weight; null where it isn't whole."""
    units: list[str] = []
    for unit in UNITS:
        steps = " ".join(f"WHEN {e} THEN {step(name, unit, e)}" for e in range(-12, 4))
        units.append(f"WHEN '{unit}' THEN CASE {name}_exponent {steps} END")
    return sa.Computed(f"CASE {name}_unit {' '.join(units)} END", persisted=True)


def lock(table: str, free: Sequence[str] = ()) -> None:
    """Refuse to change or delete rows of a table; `free` columns may be written."""
    inspector = sa.inspect(op.get_bind())
    columns = [
        column["name"]
        for column in inspector.get_columns(table)
        if column["name"] not in free and "computed" not in column
    ]
    of = f" OF {', '.join(columns)}" if free else ""
    if op.get_bind().dialect.name == "sqlite":
        refuse = f"BEGIN SELECT RAISE(ABORT, '{table}: rows are locked'); END"
        op.execute(f"CREATE TRIGGER lock_{table}_update BEFORE UPDATE{of} ON {table} {refuse}")
        op.execute(f"CREATE TRIGGER lock_{table}_delete BEFORE DELETE ON {table} {refuse}")
        return
    refuse = "FOR EACH ROW EXECUTE FUNCTION refuse_locked()"
    op.execute(f"CREATE TRIGGER lock_{table}_update BEFORE UPDATE{of} ON {table} {refuse}")
    op.execute(f"CREATE TRIGGER lock_{table}_delete BEFORE DELETE ON {table} {refuse}")


def fill() -> None:
    """The one row of the shop, and every series of numbers at its start."""
    counters = sa.table("counters", sa.column("name", sa.Text), sa.column("last", sa.Integer))
    op.bulk_insert(counters, [{"name": name, "last": 0} for name in SERIES])
    op.execute(
        "INSERT INTO shop (id, name, address, phone, email, language, paper, stock, dpi,"
        " weight_unit, hanging_basis, version)"
        " VALUES (1, '', '', '', '', 'en', 'letter', '4x3', 203, 'lb', 'hot', 1)"
    )


def upgrade() -> None:
    create_tables()
    fill()
    if op.get_bind().dialect.name == "postgresql":
        op.execute(
            "CREATE FUNCTION refuse_locked() RETURNS trigger LANGUAGE plpgsql AS $$"
            " BEGIN RAISE EXCEPTION '%: rows are locked', TG_TABLE_NAME; END $$"
        )
    for table in LOCKED:
        lock(table)
    for table, free in LOCKED_BUT.items():
        lock(table, free)


def downgrade() -> None:
    for table in TABLES:
        op.drop_table(table)
    if op.get_bind().dialect.name == "postgresql":
        op.execute("DROP FUNCTION refuse_locked()")


# In the order in which they can be dropped.
TABLES = (
    "sheet_orders",
    "sheet_acknowledgements",
    "bill_lines",
    "sheets",
    "bills",
    "payments",
    "papers",
    "packages",
    "order_lines",
    "order_changes",
    "weighings",
    "orders",
    "measurements",
    "losses",
    "holdings",
    "shares",
    "divisions",
    "charges",
    "animals",
    "rate_cards",
    "lots",
    "changes",
    "stations",
    "shop",
    "persons",
    "own_names",
    "own_lengths",
    "customers",
    "counters",
)


def create_tables() -> None:
    op.create_table(
        "counters",
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("last", BIG, nullable=False),
        sa.PrimaryKeyConstraint("name", name=op.f("pk_counters")),
        sqlite_strict=True,
    )
    op.create_table(
        "customers",
        sa.Column("id", BIG, nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("name_key", sa.Text(), nullable=False),
        sa.Column("phone", sa.Text(), nullable=False),
        sa.Column("digits", sa.Text(), nullable=False),
        sa.Column("email", sa.Text(), nullable=False),
        sa.Column("address", sa.Text(), nullable=False),
        sa.Column("notes", sa.Text(), nullable=False),
        sa.Column("rate_group", sa.Text(), nullable=False),
        sa.Column("language", sa.Text(), nullable=False),
        sa.Column("joined_into", BIG, nullable=True),
        sa.Column("version", BIG, nullable=False),
        sa.ForeignKeyConstraint(
            ["joined_into"], ["customers.id"], name=op.f("fk_customers_joined_into_customers")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_customers")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_customers_digits"), "customers", ["digits"], unique=False)
    op.create_index(op.f("ix_customers_joined_into"), "customers", ["joined_into"], unique=False)
    op.create_index(op.f("ix_customers_name_key"), "customers", ["name_key"], unique=False)
    op.create_table(
        "own_lengths",
        sa.Column("species", sa.Text(), nullable=False),
        sa.Column("stretch", sa.Text(), nullable=False),
        sa.Column("length", BIG, nullable=False),
        sa.PrimaryKeyConstraint("species", "stretch", name=op.f("pk_own_lengths")),
        sqlite_strict=True,
    )
    op.create_table(
        "own_names",
        sa.Column("language", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("text", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("language", "key", name=op.f("pk_own_names")),
        sqlite_strict=True,
    )
    op.create_table(
        "persons",
        sa.Column("id", BIG, nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("active", FLAG, nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_persons")),
        sa.UniqueConstraint("name", name=op.f("uq_persons_name")),
        sqlite_strict=True,
    )
    op.create_table(
        "shop",
        sa.Column("id", BIG, autoincrement=False, nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("address", sa.Text(), nullable=False),
        sa.Column("phone", sa.Text(), nullable=False),
        sa.Column("email", sa.Text(), nullable=False),
        sa.Column("language", sa.Text(), nullable=False),
        sa.Column("paper", sa.Text(), nullable=False),
        sa.Column("stock", sa.Text(), nullable=False),
        sa.Column("dpi", BIG, nullable=False),
        sa.Column("weight_unit", sa.Text(), nullable=False),
        sa.Column("hanging_basis", sa.Text(), nullable=False),
        sa.Column("fore_share", sa.Text(), nullable=True),
        sa.Column("kerf_saw", BIG, nullable=True),
        sa.Column("kerf_slicer", BIG, nullable=True),
        sa.Column("version", BIG, nullable=False),
        sa.CheckConstraint("id = 1", name=op.f("ck_shop_one_row")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_shop")),
        sqlite_strict=True,
    )
    op.create_table(
        "stations",
        sa.Column("id", BIG, nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_stations")),
        sa.UniqueConstraint("name", name=op.f("uq_stations_name")),
        sqlite_strict=True,
    )
    op.create_table(
        "changes",
        sa.Column("id", BIG, nullable=False),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.Column("subject", sa.Text(), nullable=False),
        sa.Column("subject_id", BIG, nullable=False),
        sa.Column("what", sa.Text(), nullable=False),
        sa.Column("reason", sa.Text(), nullable=False),
        sa.Column("data", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["person_id"], ["persons.id"], name=op.f("fk_changes_person_id_persons")
        ),
        sa.ForeignKeyConstraint(
            ["station_id"], ["stations.id"], name=op.f("fk_changes_station_id_stations")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_changes")),
        sqlite_strict=True,
    )
    op.create_index(
        "ix_changes_subject_subject_id_id", "changes", ["subject", "subject_id", "id"], unique=False
    )
    op.create_table(
        "lots",
        sa.Column("id", BIG, nullable=False),
        sa.Column("number", BIG, nullable=False),
        sa.Column("species", sa.Text(), nullable=False),
        sa.Column("head", BIG, nullable=False),
        sa.Column("day", DAY, nullable=False),
        sa.Column("producer_id", BIG, nullable=False),
        sa.Column("skin", sa.Text(), nullable=False),
        sa.Column("regime", sa.Text(), nullable=False),
        sa.Column("booked_count", BIG, nullable=True),
        sa.Column("booked_unit", sa.Text(), nullable=True),
        sa.Column("booked_exponent", BIG, nullable=True),
        sa.Column("keeps", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        sa.Column("cancelled", sa.Text(), nullable=False),
        sa.Column("last_line", BIG, nullable=False),
        sa.Column("version", BIG, nullable=False),
        sa.CheckConstraint("head >= 1", name=op.f("ck_lots_head")),
        sa.ForeignKeyConstraint(
            ["producer_id"], ["customers.id"], name=op.f("fk_lots_producer_id_customers")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_lots")),
        sa.UniqueConstraint("number", name=op.f("uq_lots_number")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_lots_day"), "lots", ["day"], unique=False)
    op.create_index(op.f("ix_lots_producer_id"), "lots", ["producer_id"], unique=False)
    op.create_table(
        "rate_cards",
        sa.Column("id", BIG, nullable=False),
        sa.Column("code", sa.Text(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("holds_from", DAY, nullable=False),
        sa.Column("regime", sa.Text(), nullable=False),
        sa.Column("rate_group", sa.Text(), nullable=False),
        sa.Column("card", sa.Text(), nullable=False),
        sa.Column("retired", FLAG, nullable=False),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.ForeignKeyConstraint(
            ["person_id"], ["persons.id"], name=op.f("fk_rate_cards_person_id_persons")
        ),
        sa.ForeignKeyConstraint(
            ["station_id"], ["stations.id"], name=op.f("fk_rate_cards_station_id_stations")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_rate_cards")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_rate_cards_code"), "rate_cards", ["code"], unique=False)
    op.create_index(op.f("ix_rate_cards_holds_from"), "rate_cards", ["holds_from"], unique=False)
    op.create_table(
        "animals",
        sa.Column("id", BIG, nullable=False),
        sa.Column("lot_id", BIG, nullable=False),
        sa.Column("place_in_lot", BIG, nullable=False),
        sa.Column("tag", sa.Text(), nullable=False),
        sa.Column("tag_key", sa.Text(), nullable=False),
        sa.Column("sex", sa.Text(), nullable=False),
        sa.Column("age", sa.Text(), nullable=False),
        sa.Column("skin", sa.Text(), nullable=False),
        sa.Column("regime", sa.Text(), nullable=False),
        sa.Column("state", sa.Text(), nullable=False),
        sa.Column("split", FLAG, nullable=True),
        sa.Column("place", sa.Text(), nullable=False),
        sa.Column("arrived_at", MOMENT, nullable=True),
        sa.Column("killed_on", DAY, nullable=True),
        sa.Column("hung_at", MOMENT, nullable=True),
        sa.Column("held_for", sa.Text(), nullable=False),
        sa.Column("version", BIG, nullable=False),
        sa.ForeignKeyConstraint(["lot_id"], ["lots.id"], name=op.f("fk_animals_lot_id_lots")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_animals")),
        sa.UniqueConstraint("lot_id", "place_in_lot", name=op.f("uq_animals_lot_id_place_in_lot")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_animals_state"), "animals", ["state"], unique=False)
    op.create_index(op.f("ix_animals_tag_key"), "animals", ["tag_key"], unique=False)
    op.create_table(
        "charges",
        sa.Column("card_id", BIG, nullable=False),
        sa.Column("position", BIG, autoincrement=False, nullable=False),
        sa.Column("code", sa.Text(), nullable=False),
        sa.Column("basis", sa.Text(), nullable=False),
        sa.Column("rate", sa.Text(), nullable=False),
        sa.Column("minimum", BIG, nullable=False),
        sa.Column("tax_rate", sa.Text(), nullable=False),
        sa.Column("falls_to", sa.Text(), nullable=False),
        sa.CheckConstraint("minimum >= 0", name=op.f("ck_charges_minimum")),
        sa.ForeignKeyConstraint(
            ["card_id"], ["rate_cards.id"], name=op.f("fk_charges_card_id_rate_cards")
        ),
        sa.PrimaryKeyConstraint("card_id", "position", name=op.f("pk_charges")),
        sqlite_strict=True,
    )
    op.create_table(
        "divisions",
        sa.Column("lot_id", BIG, nullable=False),
        sa.Column("charge", sa.Text(), nullable=False),
        sa.Column("share", BIG, autoincrement=False, nullable=False),
        sa.Column("cents", BIG, nullable=False),
        sa.ForeignKeyConstraint(["lot_id"], ["lots.id"], name=op.f("fk_divisions_lot_id_lots")),
        sa.PrimaryKeyConstraint("lot_id", "charge", "share", name=op.f("pk_divisions")),
        sqlite_strict=True,
    )
    op.create_table(
        "shares",
        sa.Column("lot_id", BIG, nullable=False),
        sa.Column("number", BIG, autoincrement=False, nullable=False),
        sa.Column("customer_id", BIG, nullable=True),
        sa.Column("leader", BIG, nullable=True),
        sa.Column("deposit_asked", BIG, nullable=False),
        sa.ForeignKeyConstraint(
            ["customer_id"], ["customers.id"], name=op.f("fk_shares_customer_id_customers")
        ),
        sa.ForeignKeyConstraint(["lot_id"], ["lots.id"], name=op.f("fk_shares_lot_id_lots")),
        sa.PrimaryKeyConstraint("lot_id", "number", name=op.f("pk_shares")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_shares_customer_id"), "shares", ["customer_id"], unique=False)
    op.create_table(
        "holdings",
        sa.Column("id", BIG, nullable=False),
        sa.Column("lot_id", BIG, nullable=False),
        sa.Column("share", BIG, nullable=False),
        sa.Column("carcass", BIG, nullable=False),
        sa.Column("side", BIG, nullable=False),
        sa.Column("quarter", sa.Text(), nullable=False),
        sa.Column("fraction", sa.Text(), nullable=False),
        sa.CheckConstraint("quarter IN ('', 'fore', 'hind')", name=op.f("ck_holdings_quarter")),
        sa.CheckConstraint("side IN (1, 2)", name=op.f("ck_holdings_side")),
        sa.ForeignKeyConstraint(
            ["lot_id", "share"],
            ["shares.lot_id", "shares.number"],
            name=op.f("fk_holdings_lot_id_share_shares"),
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_holdings")),
        sa.UniqueConstraint(
            "lot_id",
            "share",
            "carcass",
            "side",
            "quarter",
            name=op.f("uq_holdings_lot_id_share_carcass_side_quarter"),
        ),
        sqlite_strict=True,
    )
    op.create_table(
        "losses",
        sa.Column("id", BIG, nullable=False),
        sa.Column("animal_id", BIG, nullable=False),
        sa.Column("part", sa.Text(), nullable=False),
        sa.Column("side", BIG, nullable=False),
        sa.Column("weight_count", BIG, nullable=True),
        sa.Column("weight_unit", sa.Text(), nullable=True),
        sa.Column("weight_exponent", BIG, nullable=True),
        sa.Column("reason", sa.Text(), nullable=False),
        sa.Column("before_scale", FLAG, nullable=False),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.Column("void", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["animal_id"], ["animals.id"], name=op.f("fk_losses_animal_id_animals")
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["persons.id"], name=op.f("fk_losses_person_id_persons")
        ),
        sa.ForeignKeyConstraint(
            ["station_id"], ["stations.id"], name=op.f("fk_losses_station_id_stations")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_losses")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_losses_animal_id"), "losses", ["animal_id"], unique=False)
    op.create_table(
        "measurements",
        sa.Column("id", BIG, nullable=False),
        sa.Column("animal_id", BIG, nullable=False),
        sa.Column("stretch", sa.Text(), nullable=False),
        sa.Column("side", BIG, nullable=False),
        sa.Column("length", BIG, nullable=False),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.ForeignKeyConstraint(
            ["animal_id"], ["animals.id"], name=op.f("fk_measurements_animal_id_animals")
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["persons.id"], name=op.f("fk_measurements_person_id_persons")
        ),
        sa.ForeignKeyConstraint(
            ["station_id"], ["stations.id"], name=op.f("fk_measurements_station_id_stations")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_measurements")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_measurements_animal_id"), "measurements", ["animal_id"], unique=False)
    op.create_table(
        "orders",
        sa.Column("id", BIG, nullable=False),
        sa.Column("number", BIG, nullable=False),
        sa.Column("lot_id", BIG, nullable=False),
        sa.Column("share", BIG, nullable=False),
        sa.Column("state", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        sa.Column("due", DAY, nullable=True),
        sa.Column("sheet", BIG, nullable=False),
        sa.Column("sheet_change", BIG, nullable=False),
        sa.Column("acknowledged", BIG, nullable=False),
        sa.Column("last_change", BIG, nullable=False),
        sa.Column("closed_at", MOMENT, nullable=True),
        sa.Column("version", BIG, nullable=False),
        sa.ForeignKeyConstraint(
            ["lot_id", "share"],
            ["shares.lot_id", "shares.number"],
            name=op.f("fk_orders_lot_id_share_shares"),
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_orders")),
        sa.UniqueConstraint("lot_id", "share", name=op.f("uq_orders_lot_id_share")),
        sa.UniqueConstraint("number", name=op.f("uq_orders_number")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_orders_state"), "orders", ["state"], unique=False)
    op.create_table(
        "weighings",
        sa.Column("id", BIG, nullable=False),
        sa.Column("animal_id", BIG, nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("side", BIG, nullable=False),
        sa.Column("quarter", sa.Text(), nullable=False),
        sa.Column("weight_count", BIG, nullable=False),
        sa.Column("weight_unit", sa.Text(), nullable=False),
        sa.Column("weight_exponent", BIG, nullable=False),
        sa.Column("weight_ng", BIG, nanograms("weight"), nullable=False),
        sa.Column("tare_count", BIG, nullable=True),
        sa.Column("tare_unit", sa.Text(), nullable=True),
        sa.Column("tare_exponent", BIG, nullable=True),
        sa.Column("division_count", BIG, nullable=True),
        sa.Column("division_unit", sa.Text(), nullable=True),
        sa.Column("division_exponent", BIG, nullable=True),
        sa.Column("scale", sa.Text(), nullable=False),
        sa.Column("source", sa.Text(), nullable=False),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.Column("corrects", BIG, nullable=True),
        sa.Column("withdrawn", FLAG, nullable=False),
        sa.Column("reason", sa.Text(), nullable=False),
        sa.CheckConstraint("kind IN ('live', 'hot', 'chilled')", name=op.f("ck_weighings_kind")),
        sa.CheckConstraint("side IN (0, 1, 2)", name=op.f("ck_weighings_side")),
        sa.CheckConstraint("weight_count >= 0", name=op.f("ck_weighings_not_negative")),
        sa.CheckConstraint("weight_ng IS NOT NULL", name=op.f("ck_weighings_known_unit")),
        sa.ForeignKeyConstraint(
            ["animal_id"], ["animals.id"], name=op.f("fk_weighings_animal_id_animals")
        ),
        sa.ForeignKeyConstraint(
            ["corrects"], ["weighings.id"], name=op.f("fk_weighings_corrects_weighings")
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["persons.id"], name=op.f("fk_weighings_person_id_persons")
        ),
        sa.ForeignKeyConstraint(
            ["station_id"], ["stations.id"], name=op.f("fk_weighings_station_id_stations")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_weighings")),
        sa.UniqueConstraint("corrects", name=op.f("uq_weighings_corrects")),
        sqlite_strict=True,
    )
    op.create_index(
        "ix_weighings_animal_id_kind_weight_ng",
        "weighings",
        ["animal_id", "kind", "weight_ng"],
        unique=False,
    )
    op.create_table(
        "order_changes",
        sa.Column("id", BIG, nullable=False),
        sa.Column("order_id", BIG, nullable=False),
        sa.Column("line", BIG, nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("before", sa.Text(), nullable=True),
        sa.Column("after", sa.Text(), nullable=True),
        sa.Column("undoes", BIG, nullable=True),
        sa.Column("reason", sa.Text(), nullable=False),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.ForeignKeyConstraint(
            ["order_id"], ["orders.id"], name=op.f("fk_order_changes_order_id_orders")
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["persons.id"], name=op.f("fk_order_changes_person_id_persons")
        ),
        sa.ForeignKeyConstraint(
            ["station_id"], ["stations.id"], name=op.f("fk_order_changes_station_id_stations")
        ),
        sa.ForeignKeyConstraint(
            ["undoes"], ["order_changes.id"], name=op.f("fk_order_changes_undoes_order_changes")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_order_changes")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_order_changes_order_id"), "order_changes", ["order_id"], unique=False)
    op.create_table(
        "order_lines",
        sa.Column("lot_id", BIG, nullable=False),
        sa.Column("line", BIG, autoincrement=False, nullable=False),
        sa.Column("order_id", BIG, nullable=False),
        sa.Column("cut", sa.Text(), nullable=False),
        sa.Column("choice", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(["lot_id"], ["lots.id"], name=op.f("fk_order_lines_lot_id_lots")),
        sa.ForeignKeyConstraint(
            ["order_id"], ["orders.id"], name=op.f("fk_order_lines_order_id_orders")
        ),
        sa.PrimaryKeyConstraint("lot_id", "line", name=op.f("pk_order_lines")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_order_lines_order_id"), "order_lines", ["order_id"], unique=False)
    op.create_table(
        "packages",
        sa.Column("id", BIG, nullable=False),
        sa.Column("label_number", BIG, nullable=False),
        sa.Column("order_id", BIG, nullable=False),
        sa.Column("line", BIG, nullable=False),
        sa.Column("cut", sa.Text(), nullable=False),
        sa.Column("product", sa.Text(), nullable=False),
        sa.Column("owner", sa.Text(), nullable=False),
        sa.Column("net_count", BIG, nullable=False),
        sa.Column("net_unit", sa.Text(), nullable=False),
        sa.Column("net_exponent", BIG, nullable=False),
        sa.Column("net_ng", BIG, nanograms("net"), nullable=False),
        sa.Column("tare_count", BIG, nullable=True),
        sa.Column("tare_unit", sa.Text(), nullable=True),
        sa.Column("tare_exponent", BIG, nullable=True),
        sa.Column("pieces", BIG, nullable=False),
        sa.Column("finishes", sa.Text(), nullable=False),
        sa.Column("reason", sa.Text(), nullable=False),
        sa.Column("made_at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.Column("void", sa.Text(), nullable=False),
        sa.Column("voided_at", MOMENT, nullable=True),
        sa.Column("voided_by", BIG, nullable=True),
        sa.CheckConstraint("net_count > 0", name=op.f("ck_packages_net_above_nothing")),
        sa.CheckConstraint("net_ng IS NOT NULL", name=op.f("ck_packages_known_unit")),
        sa.ForeignKeyConstraint(
            ["order_id"], ["orders.id"], name=op.f("fk_packages_order_id_orders")
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["persons.id"], name=op.f("fk_packages_person_id_persons")
        ),
        sa.ForeignKeyConstraint(
            ["station_id"], ["stations.id"], name=op.f("fk_packages_station_id_stations")
        ),
        sa.ForeignKeyConstraint(
            ["voided_by"], ["persons.id"], name=op.f("fk_packages_voided_by_persons")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_packages")),
        sa.UniqueConstraint("label_number", name=op.f("uq_packages_label_number")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_packages_order_id"), "packages", ["order_id"], unique=False)
    op.create_table(
        "papers",
        sa.Column("id", BIG, nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("lot_id", BIG, nullable=True),
        sa.Column("order_id", BIG, nullable=True),
        sa.Column("number", BIG, nullable=False),
        sa.Column("snapshot", sa.Text(), nullable=False),
        sa.Column("sha256", sa.Text(), nullable=False),
        sa.Column("made_at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.Column("pdf", sa.LargeBinary(), nullable=False),
        sa.ForeignKeyConstraint(["lot_id"], ["lots.id"], name=op.f("fk_papers_lot_id_lots")),
        sa.ForeignKeyConstraint(
            ["order_id"], ["orders.id"], name=op.f("fk_papers_order_id_orders")
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["persons.id"], name=op.f("fk_papers_person_id_persons")
        ),
        sa.ForeignKeyConstraint(
            ["station_id"], ["stations.id"], name=op.f("fk_papers_station_id_stations")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_papers")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_papers_lot_id"), "papers", ["lot_id"], unique=False)
    op.create_index(op.f("ix_papers_order_id"), "papers", ["order_id"], unique=False)
    op.create_table(
        "payments",
        sa.Column("id", BIG, nullable=False),
        sa.Column("number", BIG, nullable=False),
        sa.Column("lot_id", BIG, nullable=False),
        sa.Column("order_id", BIG, nullable=True),
        sa.Column("customer_id", BIG, nullable=True),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("means", sa.Text(), nullable=False),
        sa.Column("cents", BIG, nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.CheckConstraint(
            "kind IN ('deposit', 'payment', 'refund', 'write_off')", name=op.f("ck_payments_kind")
        ),
        sa.CheckConstraint("cents > 0", name=op.f("ck_payments_above_nothing")),
        sa.ForeignKeyConstraint(
            ["customer_id"], ["customers.id"], name=op.f("fk_payments_customer_id_customers")
        ),
        sa.ForeignKeyConstraint(["lot_id"], ["lots.id"], name=op.f("fk_payments_lot_id_lots")),
        sa.ForeignKeyConstraint(
            ["order_id"], ["orders.id"], name=op.f("fk_payments_order_id_orders")
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["persons.id"], name=op.f("fk_payments_person_id_persons")
        ),
        sa.ForeignKeyConstraint(
            ["station_id"], ["stations.id"], name=op.f("fk_payments_station_id_stations")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_payments")),
        sa.UniqueConstraint("number", name=op.f("uq_payments_number")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_payments_at"), "payments", ["at"], unique=False)
    op.create_index(op.f("ix_payments_customer_id"), "payments", ["customer_id"], unique=False)
    op.create_index(op.f("ix_payments_lot_id"), "payments", ["lot_id"], unique=False)
    op.create_index(op.f("ix_payments_order_id"), "payments", ["order_id"], unique=False)
    op.create_table(
        "bills",
        sa.Column("id", BIG, nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("number", BIG, nullable=False),
        sa.Column("lot_id", BIG, nullable=False),
        sa.Column("order_id", BIG, nullable=True),
        sa.Column("customer_id", BIG, nullable=True),
        sa.Column("total_cents", BIG, nullable=False),
        sa.Column("credits", BIG, nullable=True),
        sa.Column("reason", sa.Text(), nullable=False),
        sa.Column("paper_id", BIG, nullable=False),
        sa.Column("issued_at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.CheckConstraint(
            "(kind = 'credit') = (credits IS NOT NULL)", name=op.f("ck_bills_credits_a_bill")
        ),
        sa.CheckConstraint("kind IN ('bill', 'credit')", name=op.f("ck_bills_kind")),
        sa.ForeignKeyConstraint(["credits"], ["bills.id"], name=op.f("fk_bills_credits_bills")),
        sa.ForeignKeyConstraint(
            ["customer_id"], ["customers.id"], name=op.f("fk_bills_customer_id_customers")
        ),
        sa.ForeignKeyConstraint(["lot_id"], ["lots.id"], name=op.f("fk_bills_lot_id_lots")),
        sa.ForeignKeyConstraint(["order_id"], ["orders.id"], name=op.f("fk_bills_order_id_orders")),
        sa.ForeignKeyConstraint(["paper_id"], ["papers.id"], name=op.f("fk_bills_paper_id_papers")),
        sa.ForeignKeyConstraint(
            ["person_id"], ["persons.id"], name=op.f("fk_bills_person_id_persons")
        ),
        sa.ForeignKeyConstraint(
            ["station_id"], ["stations.id"], name=op.f("fk_bills_station_id_stations")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_bills")),
        sa.UniqueConstraint("kind", "number", name=op.f("uq_bills_kind_number")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_bills_credits"), "bills", ["credits"], unique=False)
    op.create_index(op.f("ix_bills_customer_id"), "bills", ["customer_id"], unique=False)
    op.create_index(op.f("ix_bills_issued_at"), "bills", ["issued_at"], unique=False)
    op.create_index(op.f("ix_bills_lot_id"), "bills", ["lot_id"], unique=False)
    op.create_index(op.f("ix_bills_order_id"), "bills", ["order_id"], unique=False)
    op.create_table(
        "sheets",
        sa.Column("id", BIG, nullable=False),
        sa.Column("lot_id", BIG, nullable=False),
        sa.Column("number", BIG, nullable=False),
        sa.Column("paper_id", BIG, nullable=False),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.ForeignKeyConstraint(["lot_id"], ["lots.id"], name=op.f("fk_sheets_lot_id_lots")),
        sa.ForeignKeyConstraint(
            ["paper_id"], ["papers.id"], name=op.f("fk_sheets_paper_id_papers")
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["persons.id"], name=op.f("fk_sheets_person_id_persons")
        ),
        sa.ForeignKeyConstraint(
            ["station_id"], ["stations.id"], name=op.f("fk_sheets_station_id_stations")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_sheets")),
        sa.UniqueConstraint("lot_id", "number", name=op.f("uq_sheets_lot_id_number")),
        sqlite_strict=True,
    )
    op.create_table(
        "bill_lines",
        sa.Column("bill_id", BIG, nullable=False),
        sa.Column("position", BIG, autoincrement=False, nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("code", sa.Text(), nullable=False),
        sa.Column("basis", sa.Text(), nullable=False),
        sa.Column("quantity", sa.Text(), nullable=True),
        sa.Column("unit", sa.Text(), nullable=False),
        sa.Column("rate", sa.Text(), nullable=True),
        sa.Column("amount_cents", BIG, nullable=False),
        sa.Column("tax_cents", BIG, nullable=False),
        sa.ForeignKeyConstraint(
            ["bill_id"], ["bills.id"], name=op.f("fk_bill_lines_bill_id_bills")
        ),
        sa.PrimaryKeyConstraint("bill_id", "position", name=op.f("pk_bill_lines")),
        sqlite_strict=True,
    )
    op.create_table(
        "sheet_acknowledgements",
        sa.Column("sheet_id", BIG, nullable=False),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.ForeignKeyConstraint(
            ["person_id"], ["persons.id"], name=op.f("fk_sheet_acknowledgements_person_id_persons")
        ),
        sa.ForeignKeyConstraint(
            ["sheet_id"], ["sheets.id"], name=op.f("fk_sheet_acknowledgements_sheet_id_sheets")
        ),
        sa.ForeignKeyConstraint(
            ["station_id"],
            ["stations.id"],
            name=op.f("fk_sheet_acknowledgements_station_id_stations"),
        ),
        sa.PrimaryKeyConstraint("sheet_id", name=op.f("pk_sheet_acknowledgements")),
        sqlite_strict=True,
    )
    op.create_table(
        "sheet_orders",
        sa.Column("sheet_id", BIG, nullable=False),
        sa.Column("order_id", BIG, nullable=False),
        sa.ForeignKeyConstraint(
            ["order_id"], ["orders.id"], name=op.f("fk_sheet_orders_order_id_orders")
        ),
        sa.ForeignKeyConstraint(
            ["sheet_id"], ["sheets.id"], name=op.f("fk_sheet_orders_sheet_id_sheets")
        ),
        sa.PrimaryKeyConstraint("sheet_id", "order_id", name=op.f("pk_sheet_orders")),
        sqlite_strict=True,
    )
