"""How an animal on the waiting list comes; since when counted packages are in a freezer.

Revision 0019, after 0018. Who waits already comes in a way nobody said, custom-exempt; of counted
packages nothing was said.
"""

import sqlalchemy as sa
from alembic import op

revision = "0019"
down_revision = "0018"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
MOMENT = sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")
WAITS_AS = (
    ("skin", "unknown", "skin IN ('scalded', 'skinned', 'unknown')"),
    ("regime", "custom", "regime IN ('custom', 'inspected')"),
    ("keeps", "", ""),
)


def upgrade() -> None:
    """Three columns of the waiting list, and a locked table as that of weighed packages."""
    for name, before, rule in WAITS_AS:
        checks = [sa.CheckConstraint(rule, name=op.f(f"ck_waiting_{name}"))] if rule else []
        column = sa.Column(name, sa.Text(), *checks, server_default=before, nullable=False)
        op.add_column("waiting", column)
    op.create_table(
        "counted_freezings",
        sa.Column("id", BIG, nullable=False),
        sa.Column("counted_id", BIG, nullable=False),
        sa.Column("since", MOMENT, nullable=True),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        key("counted_id", "counted_packages"),
        key("person_id", "persons"),
        key("station_id", "stations"),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_counted_freezings")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_counted_freezings_counted_id"), "counted_freezings", ["counted_id"])
    refuse = "FOR EACH ROW EXECUTE FUNCTION refuse_locked()"
    if op.get_bind().dialect.name == "sqlite":
        refuse = "BEGIN SELECT RAISE(ABORT, 'counted_freezings: rows are locked'); END"
    for what in ("update", "delete"):
        op.execute(
            f"CREATE TRIGGER lock_counted_freezings_{what} BEFORE {what.upper()} "
            f"ON counted_freezings {refuse}"
        )


def downgrade() -> None:
    """Nobody says how who waits comes, nor that counted packages are in a freezer."""
    op.drop_table("counted_freezings")
    with op.batch_alter_table("waiting") as waiting:
        for name, _, rule in WAITS_AS:
            if rule:
                waiting.drop_constraint(op.f(f"ck_waiting_{name}"), type_="check")
            waiting.drop_column(name)


def key(column: str, to: str) -> sa.ForeignKeyConstraint:
    """A key to another table's id."""
    name = op.f(f"fk_counted_freezings_{column}_{to}")
    return sa.ForeignKeyConstraint([column], [f"{to}.id"], name=name)
