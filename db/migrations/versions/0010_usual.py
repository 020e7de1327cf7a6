"""The shop's own usual lines and how split sides are cut.

Revision 0010, after 0009. Variant 1 of a primal is what the shop does when nobody says otherwise;
the others are as usual to the block and aren't boxed.
"""

import sqlalchemy as sa
from alembic import op

revision = "0010"
down_revision = "0009"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
FLAG = sa.Boolean().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    """No lines: the species files' hold until the shop writes its own. Split sides cut alike."""
    op.create_table(
        "usual_lines",
        sa.Column("species", sa.Text(), nullable=False),
        sa.Column("primal", sa.Text(), nullable=False),
        sa.Column("variant", BIG, nullable=False, autoincrement=False),
        sa.Column("place", BIG, nullable=False, autoincrement=False),
        sa.Column("cut", sa.Text(), nullable=False),
        sa.Column("choice", sa.Text(), nullable=False),
        sa.CheckConstraint("variant > 0", name=op.f("ck_usual_lines_variant_from_one")),
        sa.PrimaryKeyConstraint(
            "species", "primal", "variant", "place", name=op.f("pk_usual_lines")
        ),
        sqlite_strict=True,
    )
    op.create_table(
        "usual_rules",
        sa.Column("id", BIG, nullable=False, autoincrement=False),
        sa.Column("cut_alike", FLAG, nullable=False),
        sa.Column("version", BIG, nullable=False),
        sa.CheckConstraint("id = 1", name=op.f("ck_usual_rules_one_row")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_usual_rules")),
        sqlite_strict=True,
    )
    on = "1" if op.get_bind().dialect.name == "sqlite" else "true"
    op.execute(f"INSERT INTO usual_rules VALUES (1, {on}, 1)")


def downgrade() -> None:
    """The tables go."""
    op.drop_table("usual_lines")
    op.drop_table("usual_rules")
