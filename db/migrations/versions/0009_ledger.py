"""Ledger entries, closed periods and tax.

Revision 0009, after 0008.
"""

revision = "0009"
down_revision = "0008"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Nothing yet."""


def downgrade() -> None:
    """Nothing yet."""
