"""What a bill took of orders' extras, and how the shop counts days of storage.

Revision 0017, after 0016. Bills issued before are not known to have taken anything: credited, they
give back what their own lines say. Storage is counted by every day, as it was.
"""

import sqlalchemy as sa
from alembic import op

revision = "0017"
down_revision = "0016"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
STORAGE = "storage_days IN ('every_day', 'weekdays', 'six_days')"


def upgrade() -> None:
    """Which rows of the extras were written by issuing a bill; the shop's days of storage."""
    op.create_table(
        "taken_extras",
        sa.Column("extras_id", BIG, nullable=False, autoincrement=False),
        sa.Column("bill_id", BIG, nullable=False),
        key("extras_id", "order_extras"),
        key("bill_id", "bills"),
        sa.PrimaryKeyConstraint("extras_id", name=op.f("pk_taken_extras")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_taken_extras_bill_id"), "taken_extras", ["bill_id"])
    refuse = "FOR EACH ROW EXECUTE FUNCTION refuse_locked()"
    if op.get_bind().dialect.name == "sqlite":
        refuse = "BEGIN SELECT RAISE(ABORT, 'taken_extras: rows are locked'); END"
    for what in ("update", "delete"):
        op.execute(
            f"CREATE TRIGGER lock_taken_extras_{what} BEFORE {what.upper()} ON taken_extras"
            f" {refuse}"
        )
    op.add_column(
        "shop",
        sa.Column(
            "storage_days",
            sa.Text(),
            sa.CheckConstraint(STORAGE, name=op.f("ck_shop_storage_days")),
            server_default="every_day",
            nullable=False,
        ),
    )


def downgrade() -> None:
    """Storage is counted by every day again; credits give back what their bill's lines say."""
    with op.batch_alter_table("shop") as shop:
        shop.drop_constraint(op.f("ck_shop_storage_days"), type_="check")
        shop.drop_column("storage_days")
    op.drop_table("taken_extras")


def key(column: str, to: str) -> sa.ForeignKeyConstraint:
    """A key to another table's id."""
    name = op.f(f"fk_taken_extras_{column}_{to}")
    return sa.ForeignKeyConstraint([column], [f"{to}.id"], name=name)
