"""Kill days, closed days, places, and who waits for one.

Revision 0002, after 0001.
"""

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
MOMENT = sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")
DAY = sa.Date().with_variant(sa.Text(), "sqlite")
FLAG = sa.Boolean().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    """The four tables."""
    create("calendar_plans", text("plan"))
    create(
        "other_days",
        sa.Column("day", DAY, nullable=False),
        sa.Column("closed", FLAG, nullable=False),
        text("note"),
        text("places"),
        sa.UniqueConstraint("day", name=op.f("uq_other_days_day")),
    )
    create(
        "overrules",
        sa.Column("lot_id", BIG, nullable=False),
        text("codes"),
        text("reason"),
        key("overrules", "lot_id", "lots"),
    )
    op.create_index(op.f("ix_overrules_lot_id"), "overrules", ["lot_id"], unique=False)
    create(
        "waiting",
        sa.Column("customer_id", BIG, nullable=False),
        text("species"),
        sa.Column("head", BIG, nullable=False),
        sa.Column("from_day", DAY, nullable=False),
        text("note"),
        text("state"),
        sa.Column("version", BIG, nullable=False),
        key("waiting", "customer_id", "customers"),
        sa.CheckConstraint("head >= 1", name=op.f("ck_waiting_head")),
        sa.CheckConstraint(
            "state IN ('waiting', 'told', 'booked', 'gone')", name=op.f("ck_waiting_state")
        ),
    )
    op.create_index(op.f("ix_waiting_state"), "waiting", ["state"], unique=False)
    for table in ("calendar_plans", "overrules"):
        lock(table)


def downgrade() -> None:
    """The tables go."""
    for table in ("waiting", "overrules", "other_days", "calendar_plans"):
        op.drop_table(table)


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


def key(table: str, column: str, to: str) -> sa.ForeignKeyConstraint:
    """A key to another table's id."""
    return sa.ForeignKeyConstraint([column], [f"{to}.id"], name=op.f(f"fk_{table}_{column}_{to}"))


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
