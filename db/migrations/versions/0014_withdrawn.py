"""Reports of the block taken back: the report stays, what it said no longer counts.

Revision 0014, after 0013. Every report that was kept stands.
"""

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0014"
down_revision = "0013"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
MOMENT = sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")


def upgrade() -> None:
    """Reports taken back, and the measurements that fall with them."""
    op.create_table(
        "withdrawn_findings",
        sa.Column("id", BIG, nullable=False),
        sa.Column("finding_id", BIG, nullable=False),
        sa.Column("reason", sa.Text(), nullable=False),
        key("withdrawn_findings", "finding_id", "block_findings"),
        sa.UniqueConstraint("finding_id", name=op.f("uq_withdrawn_findings_finding_id")),
        *stamp("withdrawn_findings"),
        sqlite_strict=True,
    )
    op.create_table(
        "withdrawn_measurements",
        sa.Column("measurement_id", BIG, nullable=False, autoincrement=False),
        sa.Column("finding_id", BIG, nullable=False),
        key("withdrawn_measurements", "measurement_id", "measurements"),
        key("withdrawn_measurements", "finding_id", "block_findings"),
        sa.PrimaryKeyConstraint("measurement_id", name=op.f("pk_withdrawn_measurements")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_withdrawn_measurements_finding_id"), "withdrawn_measurements", ["finding_id"]
    )
    for table in ("withdrawn_findings", "withdrawn_measurements"):
        lock(table)


def downgrade() -> None:
    """All reports stand again."""
    op.drop_table("withdrawn_measurements")
    op.drop_table("withdrawn_findings")


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
        op.execute(
            f"CREATE TRIGGER lock_{table}_{what} BEFORE {what.upper()} ON {table} {refuse}"
        )
