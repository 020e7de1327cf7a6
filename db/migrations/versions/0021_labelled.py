"""When a package's label was first handed to the printer.

Revision 0021, after 0020. Of packages kept before nothing is known that says otherwise: their
labels count as printed when they were made. Once said, the moment is locked.
"""

import sqlalchemy as sa
from alembic import op

revision = "0021"
down_revision = "0020"
branch_labels = None
depends_on = None

MOMENT = sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")


def upgrade() -> None:
    """The moment, filled, and locked once it is there."""
    op.add_column("packages", sa.Column("labelled_at", MOMENT, nullable=True))
    op.execute("UPDATE packages SET labelled_at = made_at")
    once = "WHEN (OLD.labelled_at IS NOT NULL)"
    what = "CREATE TRIGGER lock_packages_labelled BEFORE UPDATE OF labelled_at ON packages"
    refuse = "EXECUTE FUNCTION refuse_locked()"
    if op.get_bind().dialect.name == "sqlite":
        refuse = "BEGIN SELECT RAISE(ABORT, 'packages: rows are locked'); END"
    op.execute(f"{what} FOR EACH ROW {once} {refuse}")


def downgrade() -> None:
    """Nobody knows which labels were printed."""
    beside = " ON packages" if op.get_bind().dialect.name == "postgresql" else ""
    op.execute(f"DROP TRIGGER lock_packages_labelled{beside}")
    op.drop_column("packages", "labelled_at")
