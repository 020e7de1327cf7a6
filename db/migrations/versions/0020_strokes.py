"""Which packages were wrapped in one stroke; lines weighed in a shop that counts; their total.

Revision 0020, after 0019. A stroke is named by its first label number. Packages kept before are of
one stroke where they are of one order, line, cut and weight, of one moment, person and station, as
the program told them until now. No line of an order was chosen to be weighed, no total kept.
"""

import sqlalchemy as sa
from alembic import op

revision = "0020"
down_revision = "0019"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
MOMENT = sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")
SAME = (
    *("order_id", "line", "cut", "net_count", "net_unit", "net_exponent"),
    *("made_at", "person_id", "station_id"),
)


def upgrade() -> None:
    """The stroke, filled and locked; two tables of lines wrapped by count."""
    op.add_column("packages", sa.Column("stroke", BIG, server_default="0", nullable=False))
    alike = " AND ".join(f"other.{one} = packages.{one}" for one in SAME)
    op.execute(
        "UPDATE packages SET stroke = "
        f"(SELECT min(other.label_number) FROM packages AS other WHERE {alike})"
    )
    refuse = "FOR EACH ROW EXECUTE FUNCTION refuse_locked()"
    if op.get_bind().dialect.name == "sqlite":
        refuse = "BEGIN SELECT RAISE(ABORT, 'packages: rows are locked'); END"
    op.execute(f"CREATE TRIGGER lock_packages_stroke BEFORE UPDATE OF stroke ON packages {refuse}")
    create_weighed_lines()
    create_counted_weights()
    lock("counted_weights")


def downgrade() -> None:
    """Strokes are told by moment and weight again."""
    op.drop_table("counted_weights")
    op.drop_table("weighed_lines")
    beside = " ON packages" if op.get_bind().dialect.name == "postgresql" else ""
    op.execute(f"DROP TRIGGER lock_packages_stroke{beside}")
    op.drop_column("packages", "stroke")


def create_weighed_lines() -> None:
    """Lines of a counted order that are weighed all the same, by whose choice."""
    op.create_table(
        "weighed_lines",
        sa.Column("order_id", BIG, nullable=False, autoincrement=False),
        sa.Column("line", BIG, nullable=False, autoincrement=False),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        key("weighed_lines", "order_id", "orders"),
        key("weighed_lines", "person_id", "persons"),
        key("weighed_lines", "station_id", "stations"),
        sa.PrimaryKeyConstraint("order_id", "line", name=op.f("pk_weighed_lines")),
        sqlite_strict=True,
    )


def create_counted_weights() -> None:
    """What the counted packages of a line weigh together; the last row of a line holds."""
    op.create_table(
        "counted_weights",
        sa.Column("id", BIG, nullable=False),
        sa.Column("order_id", BIG, nullable=False),
        sa.Column("line", BIG, nullable=False),
        sa.Column("packages", BIG, nullable=False),
        sa.Column("net_count", BIG, nullable=False),
        sa.Column("net_unit", sa.Text(), nullable=False),
        sa.Column("net_exponent", BIG, nullable=False),
        sa.Column("tare_count", BIG, nullable=True),
        sa.Column("tare_unit", sa.Text(), nullable=True),
        sa.Column("tare_exponent", BIG, nullable=True),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.CheckConstraint(
            "packages > 0 AND net_count > 0", name=op.f("ck_counted_weights_above_nothing")
        ),
        key("counted_weights", "order_id", "orders"),
        key("counted_weights", "person_id", "persons"),
        key("counted_weights", "station_id", "stations"),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_counted_weights")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_counted_weights_order_id"), "counted_weights", ["order_id"])


def key(table: str, column: str, to: str) -> sa.ForeignKeyConstraint:
    """A key to another table's id."""
    return sa.ForeignKeyConstraint([column], [f"{to}.id"], name=op.f(f"fk_{table}_{column}_{to}"))


def lock(table: str) -> None:
    """Rows are never changed and never deleted."""
    refuse = "FOR EACH ROW EXECUTE FUNCTION refuse_locked()"
    if op.get_bind().dialect.name == "sqlite":
        refuse = f"BEGIN SELECT RAISE(ABORT, '{table}: rows are locked'); END"
    for what in ("update", "delete"):
        op.execute(f"CREATE TRIGGER lock_{table}_{what} BEFORE {what.upper()} ON {table} {refuse}")
