"""Boxes, lockers and what was handed over to whom.

Revision 0006, after 0005.
"""

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
MOMENT = sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")
TABLES = ("handed_packages", "hand_overs", "package_places")


def upgrade() -> None:
    """Tables and their locks."""
    create_places()
    create_hand_overs()
    for table in TABLES:
        lock(table)


def downgrade() -> None:
    """The tables go."""
    for table in TABLES:
        op.drop_table(table)


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


def create_places() -> None:
    """In which box a package lies, and where that stands; the last row of a package holds."""
    op.create_table(
        "package_places",
        sa.Column("id", BIG, nullable=False),
        sa.Column("package_id", BIG, nullable=False),
        sa.Column("box", sa.Text(), nullable=False),
        sa.Column("place", sa.Text(), nullable=False),
        key("package_places", "package_id", "packages"),
        *stamp("package_places"),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_package_places_package_id"), "package_places", ["package_id"], unique=False
    )


def create_hand_overs() -> None:
    """Each time packages of an order left the shop, and which."""
    op.create_table(
        "hand_overs",
        sa.Column("id", BIG, nullable=False),
        sa.Column("order_id", BIG, nullable=False),
        sa.Column("fetched_by", sa.Text(), nullable=False),
        sa.Column("reason", sa.Text(), nullable=False),
        key("hand_overs", "order_id", "orders"),
        *stamp("hand_overs"),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_hand_overs_order_id"), "hand_overs", ["order_id"], unique=False)
    op.create_table(
        "handed_packages",
        sa.Column("package_id", BIG, autoincrement=False, nullable=False),
        sa.Column("hand_over_id", BIG, nullable=False),
        key("handed_packages", "package_id", "packages"),
        key("handed_packages", "hand_over_id", "hand_overs"),
        sa.PrimaryKeyConstraint("package_id", name=op.f("pk_handed_packages")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_handed_packages_hand_over_id"), "handed_packages", ["hand_over_id"], unique=False
    )


def lock(table: str) -> None:
    """Refuse to change or delete rows of a table."""
    refuse = "FOR EACH ROW EXECUTE FUNCTION refuse_locked()"
    if op.get_bind().dialect.name == "sqlite":
        refuse = f"BEGIN SELECT RAISE(ABORT, '{table}: rows are locked'); END"
    op.execute(f"CREATE TRIGGER lock_{table}_update BEFORE UPDATE ON {table} {refuse}")
    op.execute(f"CREATE TRIGGER lock_{table}_delete BEFORE DELETE ON {table} {refuse}")
