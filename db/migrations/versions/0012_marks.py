"""The plant's own marks for inspected goods.

Revision 0012, after 0011. No marks until the plant sets them: labels of inspected goods are
refused as before.
"""

import sqlalchemy as sa
from alembic import op

revision = "0012"
down_revision = "0011"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
MOMENT = sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")


def upgrade() -> None:
    """The tables, and the one row of the marks."""
    op.create_table(
        "artworks",
        sa.Column("id", BIG, nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("png", sa.LargeBinary(), nullable=False),
        sa.Column("wide", BIG, nullable=False),
        sa.Column("high", BIG, nullable=False),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.ForeignKeyConstraint(
            ["person_id"], ["persons.id"], name=op.f("fk_artworks_person_id_persons")
        ),
        sa.ForeignKeyConstraint(
            ["station_id"], ["stations.id"], name=op.f("fk_artworks_station_id_stations")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_artworks")),
        sqlite_strict=True,
    )
    op.create_table(
        "plant_marks",
        sa.Column("id", BIG, nullable=False, autoincrement=False),
        sa.Column("establishment", sa.Text(), nullable=False),
        sa.Column("legend", sa.Text(), nullable=False),
        sa.Column("artwork_id", BIG, nullable=True),
        sa.Column("keep", sa.Text(), nullable=False),
        sa.Column("version", BIG, nullable=False),
        sa.CheckConstraint("id = 1", name=op.f("ck_plant_marks_one_row")),
        sa.CheckConstraint(
            "legend IN ('', 'stock', 'artwork')", name=op.f("ck_plant_marks_legend")
        ),
        sa.CheckConstraint(
            "keep IN ('keep_frozen', 'keep_refrigerated')", name=op.f("ck_plant_marks_keep")
        ),
        sa.ForeignKeyConstraint(
            ["artwork_id"], ["artworks.id"], name=op.f("fk_plant_marks_artwork_id_artworks")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_plant_marks")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_plant_marks_artwork_id"), "plant_marks", ["artwork_id"])
    op.create_table(
        "product_numbers",
        sa.Column("species", sa.Text(), nullable=False),
        sa.Column("cut", sa.Text(), nullable=False),
        sa.Column("gtin", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("species", "cut", name=op.f("pk_product_numbers")),
        sqlite_strict=True,
    )
    op.execute("INSERT INTO plant_marks VALUES (1, '', '', NULL, 'keep_frozen', 1)")


def downgrade() -> None:
    """The tables go."""
    op.drop_table("product_numbers")
    op.drop_table("plant_marks")
    op.drop_table("artworks")
