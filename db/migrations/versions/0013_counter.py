"""Rules of ringing, what owners were told their shares weigh, and what is frozen.

Revision 0013, after 0012. Rules that were kept stay: counted from the kill, reminders three days
before. A shop begins with 24 hours in the freezer, counted from the label.
"""

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0013"
down_revision = "0012"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
MOMENT = sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")
LOCKED = ("weights_told", "freezings", "fresh_pick_ups")
NEW_RULES = ("counted_from", "remind_days", "most_calls")


def upgrade() -> None:
    """The columns and tables, their locks, and the freezer's rule as a shop begins with it."""
    op.add_column(
        "call_rules",
        sa.Column(
            "counted_from",
            sa.Text(),
            sa.CheckConstraint(
                "counted_from IN ('kill', 'block')", name=op.f("ck_call_rules_counted")
            ),
            server_default="kill",
            nullable=False,
        ),
    )
    for name in ("remind_days", "most_calls"):
        op.add_column("call_rules", sa.Column(name, BIG, server_default="3", nullable=False))
    create_weights_told()
    create_freezing()
    for table in LOCKED:
        lock(table)


def downgrade() -> None:
    """They go."""
    for table in (*LOCKED, "freezer_rules"):
        op.drop_table(table)
    for name in NEW_RULES:
        op.drop_column("call_rules", name)


def create_weights_told() -> None:
    """What an owner was told his share weighs, and how."""
    op.create_table(
        "weights_told",
        sa.Column("id", BIG, nullable=False),
        sa.Column("order_id", BIG, nullable=False),
        sa.Column("how", sa.Text(), nullable=False),
        sa.Column("hanging_ng", BIG, nullable=True),
        sa.Column("note", sa.Text(), nullable=False),
        sa.CheckConstraint("how IN ('mail', 'paper', 'spoken')", name=op.f("ck_weights_told_how")),
        key("weights_told", "order_id", "orders"),
        *stamp("weights_told"),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_weights_told_order_id"), "weights_told", ["order_id"])


def create_freezing() -> None:
    """Since when a package is in a freezer, who fetches fresh, and the shop's hours."""
    op.create_table(
        "freezings",
        sa.Column("id", BIG, nullable=False),
        sa.Column("package_id", BIG, nullable=False),
        sa.Column("since", MOMENT, nullable=True),
        key("freezings", "package_id", "packages"),
        *stamp("freezings"),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_freezings_package_id"), "freezings", ["package_id"])
    op.create_table(
        "fresh_pick_ups",
        sa.Column("id", BIG, nullable=False),
        sa.Column("order_id", BIG, nullable=False),
        sa.Column("agreed", sa.Text(), nullable=False),
        sa.CheckConstraint("agreed IN ('fresh', 'frozen')", name=op.f("ck_fresh_pick_ups_agreed")),
        key("fresh_pick_ups", "order_id", "orders"),
        *stamp("fresh_pick_ups"),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_fresh_pick_ups_order_id"), "fresh_pick_ups", ["order_id"])
    op.create_table(
        "freezer_rules",
        sa.Column("id", BIG, nullable=False, autoincrement=False),
        sa.Column("hours", BIG, nullable=False),
        sa.Column("counted_from", sa.Text(), nullable=False),
        sa.Column("version", BIG, nullable=False),
        sa.CheckConstraint("id = 1", name=op.f("ck_freezer_rules_one_row")),
        sa.CheckConstraint(
            "counted_from IN ('label', 'place')", name=op.f("ck_freezer_rules_counted")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_freezer_rules")),
        sqlite_strict=True,
    )
    op.execute("INSERT INTO freezer_rules VALUES (1, 24, 'label', 1)")


def key(table: str, column: str, to: str) -> sa.ForeignKeyConstraint:
    """A key to another table's id."""
    return sa.ForeignKeyConstraint([column], [f"{to}.id"], name=op.f(f"fk_{table}_{column}_{to}"))


def stamp(table: str) -> list[Any]:
    """Who wrote it when, and at which station; and the key."""
    return [
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        key(table, "person_id", "persons"),
        key(table, "station_id", "stations"),
        sa.PrimaryKeyConstraint("id", name=op.f(f"pk_{table}")),
    ]


def lock(table: str) -> None:
    """Rows are never changed."""
    refuse = "FOR EACH ROW EXECUTE FUNCTION refuse_locked()"
    if op.get_bind().dialect.name == "sqlite":
        refuse = f"BEGIN SELECT RAISE(ABORT, '{table}: rows are locked'); END"
    for what in ("update", "delete"):
        op.execute(f"CREATE TRIGGER lock_{table}_{what} BEFORE {what.upper()} ON {table} {refuse}")
