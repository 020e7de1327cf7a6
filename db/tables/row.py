"""What every table of the store is declared on: column types by annotation, names by convention."""

from collections.abc import Sequence
from datetime import date, datetime
from fractions import Fraction
from typing import Annotated, ClassVar

from sqlalchemy import Computed, LargeBinary, Text
from sqlalchemy.orm import DeclarativeBase, mapped_column

from db.columns import (
    METADATA,
    UNIT_NANOGRAMS,
    Big,
    Cents,
    Day,
    ExactFraction,
    Flag,
    UtcDateTime,
)
from shared.units import WeightUnit

Id = Annotated[int, mapped_column(Big, primary_key=True)]
Money = Annotated[int, mapped_column(Cents)]
EXPONENTS: Sequence[int] = range(-12, 4)


class Row(DeclarativeBase):
    """A row of some table."""

    metadata = METADATA
    type_annotation_map: ClassVar = {
        int: Big,
        str: Text,
        bool: Flag,
        bytes: LargeBinary,
        date: Day,
        datetime: UtcDateTime,
        Fraction: ExactFraction,
    }


def nanograms_sql(name: str) -> str:
    """The SQL that turns the three columns of a weight into nanograms, rounded half up.

    34.5 lb is count 345, unit lb, exponent -1: 345 * 45359237000 = 15,648,936,765,000 ng. 8.5 oz
    are 240,970,946,562.5 ng, told as ...563; what was weighed stays in the three columns.
    """
    units = " ".join(f"WHEN '{unit}' THEN {_unit_sql(name, unit)}" for unit in UNIT_NANOGRAMS)
    return f"CASE {name}_unit {units} END"


def _unit_sql(name: str, unit: WeightUnit) -> str:
    steps = " ".join(f"WHEN {step} THEN {_step_sql(name, unit, step)}" for step in EXPONENTS)
    return f"CASE {name}_exponent {steps} END"


def _step_sql(name: str, unit: WeightUnit, exponent: int) -> str:
    ratio = UNIT_NANOGRAMS[unit] * Fraction(10) ** exponent
    count, top, low = f"{name}_count", ratio.numerator, ratio.denominator
    if low == 1:
        return f"{count} * {top}"
    return f"{count} / {low} * {top} + ({count} % {low} * {2 * top} + {low}) / {2 * low}"


def nanograms_column(name: str) -> Computed:
    """The generated column beside a weight's three."""
    return Computed(nanograms_sql(name), persisted=True)
