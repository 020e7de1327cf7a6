"""Packages wrapped by count, without a weight; and whether the shop wraps so.

Revision 0015, after 0014. Every shop weighs its packages until it says otherwise; packages that
were kept stay weighed.
"""

import sqlalchemy as sa
from alembic import op

revision = "0015"
down_revision = "0014"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
MOMENT = sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")
MADE = (
    *("id", "order_id", "line", "cut", "product", "owner", "packages", "finishes"),
    *("made_at", "person_id", "station_id"),
)


def upgrade() -> None:
    """The shop's way of wrapping, counted packages, and which of them left."""
    op.add_column(
        "shop",
        sa.Column(
            "wrapped",
            sa.Text(),
            sa.CheckConstraint("wrapped IN ('weighed', 'counted')", name=op.f("ck_shop_wrapped")),
            server_default="weighed",
            nullable=False,
        ),
    )
    create_counted()
    op.create_table(
        "handed_counts",
        sa.Column("counted_id", BIG, nullable=False, autoincrement=False),
        sa.Column("hand_over_id", BIG, nullable=False),
        key("handed_counts", "counted_id", "counted_packages"),
        key("handed_counts", "hand_over_id", "hand_overs"),
        sa.PrimaryKeyConstraint("counted_id", name=op.f("pk_handed_counts")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_handed_counts_hand_over_id"), "handed_counts", ["hand_over_id"])
    lock("counted_packages", f" OF {', '.join(MADE)}")
    lock("handed_counts")


def downgrade() -> None:
    """Only weighed packages are known again."""
    op.drop_table("handed_counts")
    op.drop_table("counted_packages")
    with op.batch_alter_table("shop") as shop:
        shop.drop_constraint(op.f("ck_shop_wrapped"), type_="check")
        shop.drop_column("wrapped")


def create_counted() -> None:
    """One row for what was wrapped by count at one time."""
    op.create_table(
        "counted_packages",
        sa.Column("id", BIG, nullable=False),
        sa.Column("order_id", BIG, nullable=False),
        sa.Column("line", BIG, nullable=False),
        sa.Column("cut", sa.Text(), nullable=False),
        sa.Column("product", sa.Text(), nullable=False),
        sa.Column("owner", sa.Text(), nullable=False),
        sa.Column("packages", BIG, nullable=False),
        sa.Column("finishes", sa.Text(), nullable=False),
        sa.Column("made_at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.Column("void", sa.Text(), nullable=False),
        sa.Column("voided_at", MOMENT, nullable=True),
        sa.Column("voided_by", BIG, nullable=True),
        sa.CheckConstraint("packages > 0", name=op.f("ck_counted_packages_above_nothing")),
        key("counted_packages", "order_id", "orders"),
        key("counted_packages", "person_id", "persons"),
        key("counted_packages", "station_id", "stations"),
        key("counted_packages", "voided_by", "persons"),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_counted_packages")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_counted_packages_order_id"), "counted_packages", ["order_id"])


def key(table: str, column: str, to: str) -> sa.ForeignKeyConstraint:
    """A key to another table's id."""
    return sa.ForeignKeyConstraint([column], [f"{to}.id"], name=op.f(f"fk_{table}_{column}_{to}"))


def lock(table: str, of: str = "") -> None:
    """Rows are never deleted, and but for what `of` leaves out never changed."""
    refuse = "FOR EACH ROW EXECUTE FUNCTION refuse_locked()"
    if op.get_bind().dialect.name == "sqlite":
        refuse = f"BEGIN SELECT RAISE(ABORT, '{table}: rows are locked'); END"
    op.execute(f"CREATE TRIGGER lock_{table}_update BEFORE UPDATE{of} ON {table} {refuse}")
    op.execute(f"CREATE TRIGGER lock_{table}_delete BEFORE DELETE ON {table} {refuse}")
