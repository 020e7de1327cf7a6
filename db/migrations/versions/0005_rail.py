"""Scales, arrival facts, holds, dressing, gradings, the cooler, and what owners must be told.

Revision 0005, after 0004. Rows of all but the scales are never changed: the last one holds.
"""

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
MOMENT = sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")
DAY = sa.Date().with_variant(sa.Text(), "sqlite")
FLAG = sa.Boolean().with_variant(sa.Integer(), "sqlite")
LOCKED = (
    "arrivals",
    "deer_intakes",
    "holds",
    "dressings",
    "gradings",
    "loss_findings",
    "cooler_readings",
    "cooler_limits",
    "hang_wishes",
    "order_news",
)


def upgrade() -> None:
    """The tables, and the locks on their rows."""
    create_scales()
    create_arrival()
    create_deer()
    create_carcass()
    create_cooler()
    create_news()
    for table in LOCKED:
        lock(table)


def downgrade() -> None:
    """The tables go."""
    for table in (*LOCKED, "scales"):
        op.drop_table(table)


def create_scales() -> None:
    """Scales on the stations' lines."""
    create(
        "scales",
        text("name"),
        sa.Column("at_station", BIG, nullable=False),
        text("port"),
        sa.Column("baud", BIG, nullable=False),
        sa.Column("bits", BIG, nullable=False),
        text("parity"),
        sa.Column("stop_bits", BIG, nullable=False),
        text("pattern"),
        text("own_pattern"),
        text("unit"),
        *weight("division"),
        *weight("hook"),
        *weight("gambrel"),
        sa.Column("used", FLAG, nullable=False),
        sa.Column("version", BIG, nullable=False),
        key("scales", "at_station", "stations"),
        check("scales", "unit", "unit IN ('lb', 'oz', 'kg', 'g')"),
        check("scales", "parity", "parity IN ('N', 'E', 'O')"),
    )
    index("scales", "at_station")


def create_arrival() -> None:
    """What is seen and said at the pen, and holds."""
    create(
        "arrivals",
        sa.Column("animal_id", BIG, nullable=False),
        text("condition"),
        text("note"),
        text("age_by"),
        text("age_said"),
        sa.Column("penned_at", MOMENT, nullable=True),
        sa.Column("healthy", FLAG, nullable=True),
        sa.Column("withdrawn_drugs", FLAG, nullable=True),
        text("drugs"),
        text("statement_of"),
        key("arrivals", "animal_id", "animals"),
        check("arrivals", "condition", "condition IN ('', 'sound', 'lame', 'down', 'dead')"),
        check("arrivals", "age_by", "age_by IN ('', 'teeth', 'papers', 'said')"),
    )
    index("arrivals", "animal_id")
    create(
        "holds",
        sa.Column("animal_id", BIG, nullable=False),
        text("kind"),
        sa.Column("held", FLAG, nullable=False),
        text("reason"),
        key("holds", "animal_id", "animals"),
        check("holds", "kind", "kind IN ('disease_test', 'other')"),
    )
    index("holds", "animal_id")


def create_deer() -> None:
    """The intake of deer."""
    create(
        "deer_intakes",
        sa.Column("animal_id", BIG, nullable=False),
        text("hunter"),
        text("license"),
        text("game_tag"),
        sa.Column("killed_on", DAY, nullable=True),
        text("county"),
        text("cape"),
        text("head"),
        text("antlers"),
        text("meat"),
        text("signed_by"),
        key("deer_intakes", "animal_id", "animals"),
        check("deer_intakes", "meat", "meat IN ('', 'apart', 'batch')"),
        check("deer_intakes", "antlers", "antlers IN ('', 'keep', 'leave')"),
        check("deer_intakes", "cape", "cape IN ('', 'keep', 'leave')"),
        check("deer_intakes", "head", "head IN ('', 'keep', 'leave')"),
    )
    index("deer_intakes", "animal_id")


def create_carcass() -> None:
    """Dressing, gradings, and who took a part."""
    create(
        "dressings",
        sa.Column("animal_id", BIG, nullable=False),
        text("head"),
        text("feet"),
        text("leaf"),
        text("kidneys"),
        key("dressings", "animal_id", "animals"),
        check("dressings", "leaf", "leaf IN ('', 'in', 'out')"),
        check("dressings", "feet", "feet IN ('', 'on', 'off')"),
        check("dressings", "kidneys", "kidneys IN ('', 'in', 'out')"),
        check("dressings", "head", "head IN ('', 'on', 'off')"),
    )
    index("dressings", "animal_id")
    create(
        "gradings",
        sa.Column("animal_id", BIG, nullable=False),
        text("measures"),
        text("note"),
        key("gradings", "animal_id", "animals"),
    )
    index("gradings", "animal_id")
    create(
        "loss_findings",
        sa.Column("loss_id", BIG, nullable=False),
        text("how"),
        key("loss_findings", "loss_id", "losses"),
        sa.UniqueConstraint("loss_id", name=op.f("uq_loss_findings_loss_id")),
        check("loss_findings", "how", "how IN ('condemned', 'trimmed', 'discarded')"),
    )


def create_cooler() -> None:
    """Temperatures and the shop's limits."""
    create(
        "cooler_readings",
        text("room"),
        sa.Column("read_at", MOMENT, nullable=False),
        sa.Column("tenths", BIG, nullable=False),
        text("unit"),
        text("note"),
        sa.Column("corrects", BIG, nullable=True),
        sa.Column("withdrawn", FLAG, nullable=False),
        text("reason"),
        key("cooler_readings", "corrects", "cooler_readings"),
        sa.UniqueConstraint("corrects", name=op.f("uq_cooler_readings_corrects")),
        check("cooler_readings", "unit", "unit IN ('F', 'C')"),
    )
    index("cooler_readings", "room")
    create(
        "cooler_limits",
        text("room"),
        sa.Column("low_tenths", BIG, nullable=True),
        sa.Column("high_tenths", BIG, nullable=True),
        text("unit"),
        sa.Column("used", FLAG, nullable=False),
        check("cooler_limits", "unit", "unit IN ('F', 'C')"),
    )
    index("cooler_limits", "room")


def create_news() -> None:
    """Days owners want, and what they must be told."""
    create(
        "hang_wishes",
        sa.Column("order_id", BIG, nullable=False),
        sa.Column("days", BIG, nullable=True),
        text("note"),
        key("hang_wishes", "order_id", "orders"),
        check("hang_wishes", "days", "days IS NULL OR days >= 0"),
    )
    index("hang_wishes", "order_id")
    create(
        "order_news",
        sa.Column("order_id", BIG, nullable=False),
        sa.Column("animal_id", BIG, nullable=False),
        text("kind"),
        text("told"),
        key("order_news", "order_id", "orders"),
        key("order_news", "animal_id", "animals"),
        check(
            "order_news",
            "kind",
            "kind IN ('part_gone', 'condemned', 'refused', 'held', 'block')",
        ),
    )
    index("order_news", "order_id")


def lock(table: str) -> None:
    """Refuse to change or delete rows of a table."""
    refuse = "FOR EACH ROW EXECUTE FUNCTION refuse_locked()"
    if op.get_bind().dialect.name == "sqlite":
        refuse = f"BEGIN SELECT RAISE(ABORT, '{table}: rows are locked'); END"
    op.execute(f"CREATE TRIGGER lock_{table}_update BEFORE UPDATE ON {table} {refuse}")
    op.execute(f"CREATE TRIGGER lock_{table}_delete BEFORE DELETE ON {table} {refuse}")


def text(name: str) -> sa.Column[Any]:
    """A text that is always there."""
    return sa.Column(name, sa.Text(), nullable=False)


def weight(name: str) -> tuple[sa.Column[Any], ...]:
    """The three columns of a weight that may be missing."""
    return (
        sa.Column(f"{name}_count", BIG, nullable=True),
        sa.Column(f"{name}_unit", sa.Text(), nullable=True),
        sa.Column(f"{name}_exponent", BIG, nullable=True),
    )


def key(table: str, column: str, to: str) -> sa.ForeignKeyConstraint:
    """A key to another table's id."""
    return sa.ForeignKeyConstraint([column], [f"{to}.id"], name=op.f(f"fk_{table}_{column}_{to}"))


def check(table: str, name: str, rule: str) -> sa.CheckConstraint:
    """A rule of one row."""
    return sa.CheckConstraint(rule, name=op.f(f"ck_{table}_{name}"))


def index(table: str, column: str) -> None:
    """An index over one column."""
    op.create_index(op.f(f"ix_{table}_{column}"), table, [column], unique=False)


def create(table: str, *parts: sa.schema.SchemaItem) -> None:
    """A table with its id, its parts, and who wrote it when and at which station."""
    op.create_table(
        table,
        sa.Column("id", BIG, nullable=False),
        *parts,
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        key(table, "person_id", "persons"),
        key(table, "station_id", "stations"),
        sa.PrimaryKeyConstraint("id", name=op.f(f"pk_{table}")),
        sqlite_strict=True,
    )
