"""What an owner was offered in a call, what each way would change of his bill, and who was told.

Revision 0018, after 0017. Calls logged before keep nothing of it.
"""

import sqlalchemy as sa
from alembic import op

revision = "0018"
down_revision = "0017"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    """Who was spoken to, and a row for each way out that was told."""
    told = sa.Column("told_to", sa.Text(), server_default="", nullable=False)
    op.add_column("calls", told)
    op.create_table(
        "call_offers",
        sa.Column("id", BIG, nullable=False),
        sa.Column("call_id", BIG, nullable=False),
        sa.Column("offer", sa.Text(), nullable=False),
        sa.Column("cents", BIG, nullable=True),
        sa.ForeignKeyConstraint(
            ["call_id"], ["calls.id"], name=op.f("fk_call_offers_call_id_calls")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_call_offers")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_call_offers_call_id"), "call_offers", ["call_id"])
    refuse = "FOR EACH ROW EXECUTE FUNCTION refuse_locked()"
    if op.get_bind().dialect.name == "sqlite":
        refuse = "BEGIN SELECT RAISE(ABORT, 'call_offers: rows are locked'); END"
    for what in ("update", "delete"):
        op.execute(
            f"CREATE TRIGGER lock_call_offers_{what} BEFORE {what.upper()} ON call_offers {refuse}"
        )


def downgrade() -> None:
    """Calls keep nothing of what was offered."""
    op.drop_table("call_offers")
    op.drop_column("calls", "told_to")
