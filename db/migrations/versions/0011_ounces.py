"""Half ounces: nanograms of a weight rounded half up where they aren't whole.

Revision 0011, after 0010. A weight itself stays as weighed, to the last digit; only the column
for sums and sorting is rounded, by less than a nanogram. 8.5 oz are 240,970,946,562.5 ng.
"""

from fractions import Fraction

import sqlalchemy as sa
from alembic import op

revision = "0011"
down_revision = "0010"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
# 1 lb = 0.45359237 kg exactly (NIST Handbook 44, appendix C).
UNITS = {
    "lb": 453_592_370_000,
    "oz": 28_349_523_125,
    "kg": 1_000_000_000_000,
    "g": 1_000_000_000,
}
TABLES = (("weighings", "weight"), ("packages", "net"))


def whole_only(name: str, unit: str, exponent: int) -> str:
    """As revision 0001 had it: null where it isn't whole."""
    ratio = UNITS[unit] * Fraction(10) ** exponent
    if ratio.denominator == 1:
        return f"{name}_count * {ratio.numerator}"
    low = ratio.denominator
    return f"CASE {name}_count % {low} WHEN 0 THEN {name}_count / {low} * {ratio.numerator} END"


def half_up(name: str, unit: str, exponent: int) -> str:
    """Rounded half up; what is over whole counts is small, so nothing runs over 64 bits."""
    ratio = UNITS[unit] * Fraction(10) ** exponent
    count, top, low = f"{name}_count", ratio.numerator, ratio.denominator
    if low == 1:
        return f"{count} * {top}"
    return f"{count} / {low} * {top} + ({count} % {low} * {2 * top} + {low}) / {2 * low}"


def expression(name: str, rounded: bool) -> str:
    """What the generated column of a weight is made of."""
    step = half_up if rounded else whole_only
    units: list[str] = []
    for unit in UNITS:
        steps = " ".join(f"WHEN {e} THEN {step(name, unit, e)}" for e in range(-12, 4))
        units.append(f"WHEN '{unit}' THEN CASE {name}_exponent {steps} END")
    return f"CASE {name}_unit {' '.join(units)} END"


def upgrade() -> None:
    """Rounded half up from now on; what is kept already is whole and stays as it is."""
    for table, name in TABLES:
        change(table, name, rounded=True)


def downgrade() -> None:
    """Fails where a weight is kept that isn't whole nanograms: it could not be kept before."""
    for table, name in TABLES:
        change(table, name, rounded=False)


def change(table: str, name: str, rounded: bool) -> None:
    """One table's column for sums, made in the other way."""
    if op.get_bind().dialect.name == "sqlite":
        rebuild(table, expression(name, not rounded), expression(name, rounded))
        return
    op.drop_column(table, f"{name}_ng")
    computed = sa.Computed(expression(name, rounded), persisted=True)
    op.add_column(table, sa.Column(f"{name}_ng", BIG, computed, nullable=False))
    op.create_check_constraint(op.f(f"ck_{table}_known_unit"), table, f"{name}_ng IS NOT NULL")
    if table == "weighings":
        index = "ix_weighings_animal_id_kind_weight_ng"
        op.create_index(index, table, ["animal_id", "kind", "weight_ng"], unique=False)


def rebuild(table: str, old: str, new: str) -> None:
    """The same table with one expression changed, its rows, indexes and triggers kept."""
    run = op.get_bind().exec_driver_sql
    (made,) = run(f"SELECT sql FROM sqlite_master WHERE type = 'table' AND name = '{table}'").one()
    beside = run(
        "SELECT sql FROM sqlite_master WHERE type IN ('index', 'trigger')"
        f" AND tbl_name = '{table}' AND sql IS NOT NULL"
    ).scalars()
    kept = [str(one) for one in beside]
    if str(made).count(old) != 1:
        raise RuntimeError(f"{table} is not as revision 0010 left it")
    head, body = str(made).replace(old, new).split("(", 1)
    columns = ", ".join(
        str(row[1]) for row in run(f"PRAGMA table_xinfo({table})").fetchall() if row[6] == 0
    )
    run(f"{head.replace(table, f'rebuilt_{table}')}({body}")
    run(f"INSERT INTO rebuilt_{table} ({columns}) SELECT {columns} FROM {table}")
    run("PRAGMA legacy_alter_table = ON")
    run(f"DROP TABLE {table}")
    run(f"ALTER TABLE rebuilt_{table} RENAME TO {table}")
    run("PRAGMA legacy_alter_table = OFF")
    for one in kept:
        run(one)
