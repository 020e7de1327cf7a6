"""Recipes, and batches in cure, smoke and sausage.

Revision 0007, after 0006. What the shop had written under its own names for cures and seasonings
becomes a recipe each.
"""

import json
from collections.abc import Sequence
from datetime import UTC, datetime
from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0007"
down_revision = "0006"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
MOMENT = sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")
FLAG = sa.Boolean().with_variant(sa.Integer(), "sqlite")
TABLES = ("batch_added", "batch_meat", "batch_stages", "batches", "recipes")
STATES = "state IN ('gathering', 'curing', 'smoking', 'done', 'packed')"
# Columns that may be written after a row is made.
FREE: dict[str, Sequence[str]] = {
    "recipes": ("retired",),
    "batch_stages": (),
    "batch_meat": ("void",),
    "batch_added": (),
}


def upgrade() -> None:
    """Tables, locks, and recipes from what the shop had written."""
    create_recipes()
    create_batches()
    create_rows()
    op.execute("INSERT INTO counters (name, last) VALUES ('batch', 0)")
    for table, free in FREE.items():
        lock(table, free)
    take_over_names()


def downgrade() -> None:
    """The tables go."""
    for table in TABLES:
        op.drop_table(table)
    op.execute("DELETE FROM counters WHERE name = 'batch'")


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


def key(table: str, column: str, to: str) -> sa.ForeignKeyConstraint:
    """A key to another table's id."""
    return sa.ForeignKeyConstraint([column], [f"{to}.id"], name=op.f(f"fk_{table}_{column}_{to}"))


def weight(name: str, *, nullable: bool) -> list[sa.Column[Any]]:
    """A weight as weighed: count, unit, power of ten."""
    return [
        sa.Column(f"{name}_count", BIG, nullable=nullable),
        sa.Column(f"{name}_unit", sa.Text(), nullable=nullable),
        sa.Column(f"{name}_exponent", BIG, nullable=nullable),
    ]


def create_recipes() -> None:
    """The shop's recipes."""
    texts = ("name", "finish", "species", "language", "ingredients")
    op.create_table(
        "recipes",
        sa.Column("id", BIG, nullable=False),
        *(sa.Column(text, sa.Text(), nullable=False) for text in texts),
        sa.Column("allergens_known", FLAG, nullable=False),
        sa.Column("product", sa.Text(), nullable=False),
        sa.Column("strength", sa.Text(), nullable=True),
        sa.Column("ready", sa.Text(), nullable=False),
        sa.Column("retired", FLAG, nullable=False),
        *stamp("recipes"),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_recipes_finish"), "recipes", ["finish"], unique=False)


def create_batches() -> None:
    """Batches."""
    op.create_table(
        "batches",
        sa.Column("id", BIG, nullable=False),
        sa.Column("number", BIG, nullable=False),
        sa.Column("recipe_id", BIG, nullable=False),
        sa.Column("state", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        *weight("cure", nullable=True),
        *weight("brine", nullable=True),
        sa.Column("pickup", sa.Text(), nullable=True),
        *weight("out", nullable=True),
        sa.Column("version", BIG, nullable=False),
        sa.CheckConstraint(STATES, name=op.f("ck_batches_state")),
        key("batches", "recipe_id", "recipes"),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_batches")),
        sa.UniqueConstraint("number", name=op.f("uq_batches_number")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_batches_state"), "batches", ["state"], unique=False)


def create_rows() -> None:
    """What happened to a batch and what went in."""
    op.create_table(
        "batch_stages",
        sa.Column("id", BIG, nullable=False),
        sa.Column("batch_id", BIG, nullable=False),
        sa.Column("state", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        key("batch_stages", "batch_id", "batches"),
        *stamp("batch_stages"),
        sqlite_strict=True,
    )
    op.create_table(
        "batch_meat",
        sa.Column("id", BIG, nullable=False),
        sa.Column("batch_id", BIG, nullable=False),
        sa.Column("order_id", BIG, nullable=False),
        sa.Column("line", BIG, nullable=False),
        sa.Column("cut", sa.Text(), nullable=False),
        *weight("weight", nullable=False),
        sa.Column("pieces", BIG, nullable=False),
        sa.Column("void", sa.Text(), nullable=False),
        sa.CheckConstraint("weight_count > 0", name=op.f("ck_batch_meat_above_nothing")),
        key("batch_meat", "batch_id", "batches"),
        key("batch_meat", "order_id", "orders"),
        *stamp("batch_meat"),
        sqlite_strict=True,
    )
    op.create_table(
        "batch_added",
        sa.Column("id", BIG, nullable=False),
        sa.Column("batch_id", BIG, nullable=False),
        sa.Column("what", sa.Text(), nullable=False),
        *weight("weight", nullable=False),
        sa.Column("source", sa.Text(), nullable=False),
        sa.CheckConstraint("weight_count > 0", name=op.f("ck_batch_added_above_nothing")),
        key("batch_added", "batch_id", "batches"),
        *stamp("batch_added"),
        sqlite_strict=True,
    )
    for table in ("batch_stages", "batch_meat", "batch_added"):
        op.create_index(op.f(f"ix_{table}_batch_id"), table, ["batch_id"], unique=False)
    op.create_index(op.f("ix_batch_meat_order_id"), "batch_meat", ["order_id"], unique=False)


def lock(table: str, free: Sequence[str]) -> None:
    """Refuse to change or delete rows of a table; `free` columns may be written."""
    inspector = sa.inspect(op.get_bind())
    names = [one["name"] for one in inspector.get_columns(table) if one["name"] not in free]
    of = f" OF {', '.join(names)}" if free else ""
    refuse = "FOR EACH ROW EXECUTE FUNCTION refuse_locked()"
    if op.get_bind().dialect.name == "sqlite":
        refuse = f"BEGIN SELECT RAISE(ABORT, '{table}: rows are locked'); END"
    op.execute(f"CREATE TRIGGER lock_{table}_update BEFORE UPDATE{of} ON {table} {refuse}")
    op.execute(f"CREATE TRIGGER lock_{table}_delete BEFORE DELETE ON {table} {refuse}")


def take_over_names() -> None:
    """Texts kept under `recipe.<finish>.…` become recipes; the shop's first person stands by."""
    bind = op.get_bind()
    found = bind.execute(
        sa.text("SELECT language, key, text FROM own_names WHERE key LIKE 'recipe.%'")
    ).all()
    texts = {(row[0], row[1]): row[2] for row in found}
    who = bind.execute(
        sa.text("SELECT (SELECT min(id) FROM persons), (SELECT min(id) FROM stations)")
    ).one()
    if None in who:
        return
    recipes = sa.table(
        "recipes",
        *(sa.column(name) for name in ("name", "finish", "species", "language", "ingredients")),
        *(sa.column(name) for name in ("product", "strength", "ready", "person_id", "station_id")),
        sa.column("allergens_known", FLAG),
        sa.column("retired", FLAG),
        sa.column("at", MOMENT),
    )
    moment: object = datetime.now(UTC)
    if bind.dialect.name == "sqlite":
        moment = datetime.now(UTC).isoformat(timespec="microseconds")
    for (language, name), text in texts.items():
        _, finish, what = name.split(".", 2)
        if what != "ingredients" or not text.strip():
            continue
        allergens = texts.get((language, f"recipe.{finish}.allergens"), "")
        bind.execute(
            recipes.insert().values(
                name=finish.replace("_", " "),
                finish=finish,
                species="",
                language=language,
                ingredients=ingredients(text, allergens),
                allergens_known=bool(allergens.strip()),
                product="",
                strength=None,
                ready="fully_cooked" if finish == "fully_cooked" else "cook_before_eating",
                retired=False,
                at=moment,
                person_id=who[0],
                station_id=who[1],
            )
        )
    op.execute("DELETE FROM own_names WHERE key LIKE 'recipe.%'")


def ingredients(text: str, allergens: str) -> str:
    """The list as it is kept; each allergen stands by the ingredient that names it, else last."""
    named = [one.strip() for one in text.split(",") if one.strip()]
    left = [one.strip() for one in allergens.split(",") if one.strip() not in ("", "-")]
    rows: list[list[str | None]] = []
    for name in named:
        mine = next((one for one in left if one.casefold() in name.casefold()), "")
        left = [one for one in left if one != mine]
        rows.append([name, None, mine])
    if rows and left:
        last = rows[-1]
        last[2] = ", ".join(part for part in (last[2], *left) if part)
    return json.dumps(rows, ensure_ascii=False)
