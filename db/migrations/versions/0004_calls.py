"""Calls about an order, and what happens without an answer.

Revision 0004, after 0003. Calls are never changed. The rules are one row: cut sheets are due so
many days after the kill, and what is done with an order that nobody settled by then.
"""

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
MOMENT = sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")


def upgrade() -> None:
    """The two tables, the lock, and the rules as a shop begins with them."""
    op.create_table(
        "calls",
        sa.Column("id", BIG, nullable=False),
        sa.Column("order_id", BIG, nullable=False),
        sa.Column("outcome", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.CheckConstraint(
            "outcome IN ('no_answer', 'message', 'spoke')", name=op.f("ck_calls_outcome")
        ),
        key("order_id", "orders"),
        key("person_id", "persons"),
        key("station_id", "stations"),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_calls")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_calls_order_id"), "calls", ["order_id"])
    op.create_table(
        "call_rules",
        sa.Column("id", BIG, nullable=False, autoincrement=False),
        sa.Column("due_days", BIG, nullable=False),
        sa.Column("without_answer", sa.Text(), nullable=False),
        sa.Column("version", BIG, nullable=False),
        sa.CheckConstraint("id = 1", name=op.f("ck_call_rules_one_row")),
        sa.CheckConstraint(
            "without_answer IN ('usual', 'hang', 'ring')", name=op.f("ck_call_rules_without")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_call_rules")),
        sqlite_strict=True,
    )
    op.execute("INSERT INTO call_rules VALUES (1, 3, 'ring', 1)")
    refuse = "FOR EACH ROW EXECUTE FUNCTION refuse_locked()"
    if op.get_bind().dialect.name == "sqlite":
        refuse = "BEGIN SELECT RAISE(ABORT, 'calls: rows are locked'); END"
    for what in ("update", "delete"):
        op.execute(f"CREATE TRIGGER lock_calls_{what} BEFORE {what.upper()} ON calls {refuse}")


def downgrade() -> None:
    """The tables go."""
    op.drop_table("calls")
    op.drop_table("call_rules")


def key(column: str, to: str) -> sa.ForeignKeyConstraint:
    """A key to another table's id."""
    return sa.ForeignKeyConstraint([column], [f"{to}.id"], name=op.f(f"fk_calls_{column}_{to}"))
