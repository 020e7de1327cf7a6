"""What the block reports back, its ticks as they are made, and the shop's own figures.

Revision 0008, after 0007. Ticks and reports are never changed: the last tick of a place holds,
and a report of our own mistake is answered once, by a credit or with the reason for none.
"""

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0008"
down_revision = "0007"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
FLAG = sa.Boolean().with_variant(sa.Integer(), "sqlite")
MOMENT = sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")
LOCKED = ("block_answers", "block_findings", "block_ticks", "block_reads", "expected_yields")


def upgrade() -> None:
    """The tables, the locks, and own figures switched off."""
    create_ticks()
    create_findings()
    create_figures()
    for table in LOCKED:
        lock(table)


def downgrade() -> None:
    """The tables go."""
    for table in (*LOCKED, "block_rules"):
        op.drop_table(table)


def create_ticks() -> None:
    """Places ticked as made, and changes of orders the block has read."""
    create(
        "block_ticks",
        sa.Column("animal_id", BIG, nullable=False),
        sa.Column("side", BIG, nullable=False),
        sa.Column("line", BIG, nullable=False),
        text("way"),
        sa.Column("made", FLAG, nullable=False),
        key("block_ticks", "animal_id", "animals"),
    )
    op.create_index(op.f("ix_block_ticks_animal_id"), "block_ticks", ["animal_id"])
    create(
        "block_reads",
        sa.Column("order_id", BIG, nullable=False),
        sa.Column("change_id", BIG, nullable=False),
        key("block_reads", "order_id", "orders"),
        key("block_reads", "change_id", "order_changes"),
    )
    op.create_index(op.f("ix_block_reads_order_id"), "block_reads", ["order_id"])


def create_findings() -> None:
    """Reports of the block, and what the office made of our own mistakes."""
    create(
        "block_findings",
        sa.Column("animal_id", BIG, nullable=False),
        text("kind"),
        sa.Column("side", BIG, nullable=False),
        text("what"),
        sa.Column("line", BIG, nullable=False),
        sa.Column("count", BIG, nullable=False),
        sa.Column("length", BIG, nullable=True),
        sa.Column("weight_count", BIG, nullable=True),
        sa.Column("weight_unit", sa.Text(), nullable=True),
        sa.Column("weight_exponent", BIG, nullable=True),
        sa.Column("ours", FLAG, nullable=False),
        text("reason"),
        key("block_findings", "animal_id", "animals"),
        sa.CheckConstraint(
            "kind IN ('measured', 'lost', 'cut_otherwise')", name=op.f("ck_block_findings_kind")
        ),
    )
    op.create_index(op.f("ix_block_findings_animal_id"), "block_findings", ["animal_id"])
    create(
        "block_answers",
        sa.Column("finding_id", BIG, nullable=False),
        text("how"),
        text("reason"),
        key("block_answers", "finding_id", "block_findings"),
        sa.UniqueConstraint("finding_id", name=op.f("uq_block_answers_finding_id")),
        sa.CheckConstraint("how IN ('credited', 'no_credit')", name=op.f("ck_block_answers_how")),
    )


def create_figures() -> None:
    """What a carcass was to give when the block finished it, and whether own figures are used."""
    create(
        "expected_yields",
        sa.Column("animal_id", BIG, nullable=False),
        sa.Column("order_id", BIG, nullable=False),
        sa.Column("line", BIG, nullable=False),
        text("cut"),
        sa.Column("expected_ng", BIG, nullable=False),
        sa.Column("carcass_ng", BIG, nullable=False),
        key("expected_yields", "animal_id", "animals"),
        key("expected_yields", "order_id", "orders"),
    )
    op.create_index(
        op.f("ix_expected_yields_order_id_line"), "expected_yields", ["order_id", "line"]
    )
    op.create_table(
        "block_rules",
        sa.Column("id", BIG, nullable=False, autoincrement=False),
        sa.Column("own_figures", FLAG, nullable=False),
        sa.Column("sheet_words", sa.Text(), nullable=False),
        sa.Column("version", BIG, nullable=False),
        sa.CheckConstraint("id = 1", name=op.f("ck_block_rules_one_row")),
        sa.CheckConstraint(
            "sheet_words IN ('window', 'en', 'es', 'both')", name=op.f("ck_block_rules_words")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_block_rules")),
        sqlite_strict=True,
    )
    off = "0" if op.get_bind().dialect.name == "sqlite" else "false"
    op.execute(f"INSERT INTO block_rules VALUES (1, {off}, 'window', 1)")


def create(table: str, *columns: Any) -> None:
    """A table whose rows carry when, who and where."""
    op.create_table(
        table,
        sa.Column("id", BIG, nullable=False),
        *(one for one in columns if isinstance(one, sa.Column)),
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        *(one for one in columns if not isinstance(one, sa.Column)),
        key(table, "person_id", "persons"),
        key(table, "station_id", "stations"),
        sa.PrimaryKeyConstraint("id", name=op.f(f"pk_{table}")),
        sqlite_strict=True,
    )


def text(name: str) -> "sa.Column[Any]":
    """A text that is always there."""
    return sa.Column(name, sa.Text(), nullable=False)


def key(table: str, column: str, to: str) -> sa.ForeignKeyConstraint:
    """A key to another table's id."""
    return sa.ForeignKeyConstraint([column], [f"{to}.id"], name=op.f(f"fk_{table}_{column}_{to}"))


def lock(table: str) -> None:
    """Refuse to change or delete rows of a table."""
    refuse = "FOR EACH ROW EXECUTE FUNCTION refuse_locked()"
    if op.get_bind().dialect.name == "sqlite":
        refuse = f"BEGIN SELECT RAISE(ABORT, '{table}: rows are locked'); END"
    op.execute(f"CREATE TRIGGER lock_{table}_update BEFORE UPDATE ON {table} {refuse}")
    op.execute(f"CREATE TRIGGER lock_{table}_delete BEFORE DELETE ON {table} {refuse}")
