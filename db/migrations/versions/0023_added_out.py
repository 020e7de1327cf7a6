"""Fat or pork that was added to a batch may be taken out again, with its reason.

Revision 0023, after 0022. What was added before stands.
"""

import sqlalchemy as sa
from alembic import op

revision = "0023"
down_revision = "0022"
branch_labels = None
depends_on = None

TABLE, LOCK = "batch_added", "lock_batch_added_update"


def upgrade() -> None:
    """The reason may be written after; everything else stays locked."""
    op.add_column(TABLE, sa.Column("void", sa.Text(), server_default="", nullable=False))
    names = [one["name"] for one in sa.inspect(op.get_bind()).get_columns(TABLE)]
    unlock()
    lock(f" OF {', '.join(one for one in names if one != 'void')}")


def downgrade() -> None:
    """Fails where something was taken out: it would stand in the batch again."""
    taken = op.get_bind().execute(sa.text("SELECT count(*) FROM batch_added WHERE void <> ''"))
    if taken.scalar_one():
        raise RuntimeError("something added to a batch was taken out again")
    unlock()
    op.drop_column(TABLE, "void")
    lock("")


def unlock() -> None:
    """The lock on changed rows goes."""
    beside = f" ON {TABLE}" if op.get_bind().dialect.name == "postgresql" else ""
    op.execute(f"DROP TRIGGER {LOCK}{beside}")


def lock(of: str) -> None:
    """Refuse to change those columns."""
    refuse = "FOR EACH ROW EXECUTE FUNCTION refuse_locked()"
    if op.get_bind().dialect.name == "sqlite":
        refuse = f"BEGIN SELECT RAISE(ABORT, '{TABLE}: rows are locked'); END"
    op.execute(f"CREATE TRIGGER {LOCK} BEFORE UPDATE{of} ON {TABLE} {refuse}")
