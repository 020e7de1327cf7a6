"""What is also on an order's next bill: storage, delivery, something taken off.

Revision 0016, after 0015. Nothing is on any order's next bill until somebody says so.
"""

import sqlalchemy as sa
from alembic import op

revision = "0016"
down_revision = "0015"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
MOMENT = sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")
KEYS = (("order_id", "orders"), ("person_id", "persons"), ("station_id", "stations"))


def upgrade() -> None:
    """One row each time somebody says what is on it; the last one of an order holds."""
    op.create_table(
        "order_extras",
        sa.Column("id", BIG, nullable=False),
        sa.Column("order_id", BIG, nullable=False),
        sa.Column("said", sa.Text(), nullable=False),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        *[
            sa.ForeignKeyConstraint(
                [column], [f"{to}.id"], name=op.f(f"fk_order_extras_{column}_{to}")
            )
            for column, to in KEYS
        ],
        sa.PrimaryKeyConstraint("id", name=op.f("pk_order_extras")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_order_extras_order_id"), "order_extras", ["order_id"])
    refuse = "FOR EACH ROW EXECUTE FUNCTION refuse_locked()"
    if op.get_bind().dialect.name == "sqlite":
        refuse = "BEGIN SELECT RAISE(ABORT, 'order_extras: rows are locked'); END"
    for what in ("update", "delete"):
        op.execute(
            f"CREATE TRIGGER lock_order_extras_{what} BEFORE {what.upper()} ON order_extras"
            f" {refuse}"
        )


def downgrade() -> None:
    """What was said of next bills is forgotten; bills stay."""
    op.drop_table("order_extras")
