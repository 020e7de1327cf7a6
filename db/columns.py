"""Own column types: whole cents, exact fractions, weights as weighed, moments, days and flags.

Nothing here is ever a float. Every type is plain TEXT or INTEGER in SQLite, so that STRICT tables
take it, and the fitting type in PostgreSQL.
"""

from collections.abc import Mapping
from datetime import UTC, date, datetime
from fractions import Fraction
from typing import Any, cast

from sqlalchemy import BigInteger, Boolean, Date, DateTime, Integer, MetaData, Text
from sqlalchemy.engine import Dialect
from sqlalchemy.types import TypeDecorator, TypeEngine

from shared.units import NG_PER_G, NG_PER_KG, NG_PER_LB, NG_PER_OZ, WeightUnit

NAMES = {
    "ix": "ix_%(table_name)s_%(column_0_N_name)s",
    "uq": "uq_%(table_name)s_%(column_0_N_name)s",
    "ck": "ck_%(table_name)s_%(constraint_name)s",
    "fk": "fk_%(table_name)s_%(column_0_N_name)s_%(referred_table_name)s",
    "pk": "pk_%(table_name)s",
}
METADATA = MetaData(naming_convention=NAMES)

Big = BigInteger().with_variant(Integer(), "sqlite")

# Whole nanograms in one unit.
UNIT_NANOGRAMS: Mapping[WeightUnit, int] = {
    "lb": NG_PER_LB,
    "oz": NG_PER_OZ,
    "kg": NG_PER_KG,
    "g": NG_PER_G,
}


def is_sqlite(dialect: Dialect) -> bool:
    """Whether the store is a file."""
    return dialect.name == "sqlite"


class Cents(TypeDecorator[int]):
    """Whole cents; anything else (a float, a Decimal, a flag) is refused before it is stored."""

    impl = BigInteger
    cache_ok = True

    def load_dialect_impl(self, dialect: Dialect) -> TypeEngine[Any]:
        """A 64-bit whole number."""
        return dialect.type_descriptor(Integer() if is_sqlite(dialect) else BigInteger())

    def process_bind_param(self, value: object, dialect: Dialect) -> int | None:
        """The value as it is, if it is a whole number."""
        if value is None:
            return None
        if type(value) is not int:
            raise TypeError(f"cents are whole numbers, not {value!r}")
        return value

    def process_result_value(self, value: object, dialect: Dialect) -> int | None:
        """A sum comes back as Decimal from PostgreSQL; cents stay whole."""
        return None if value is None else int(cast("int", value))


class Nanograms(Cents):
    """Whole nanograms, generated from a weight as weighed."""

    cache_ok = True


class ExactFraction(TypeDecorator[Fraction]):
    """A fraction kept as text: `Fraction(3, 4)` is `3/4`."""

    impl = Text
    cache_ok = True

    def process_bind_param(self, value: object, dialect: Dialect) -> str | None:
        """Numerator and denominator in lowest terms."""
        if value is None:
            return None
        if type(value) is not Fraction:
            raise TypeError(f"not an exact fraction: {value!r}")
        return f"{value.numerator}/{value.denominator}"

    def process_result_value(self, value: object, dialect: Dialect) -> Fraction | None:
        """The fraction again."""
        return None if value is None else Fraction(cast("str", value))


class UtcDateTime(TypeDecorator[datetime]):
    """A moment, always aware and always UTC; sorts as text in SQLite."""

    impl = DateTime
    cache_ok = True

    def load_dialect_impl(self, dialect: Dialect) -> TypeEngine[Any]:
        """Text in a file, a moment with its zone on a server."""
        return dialect.type_descriptor(Text() if is_sqlite(dialect) else DateTime(timezone=True))

    def process_bind_param(self, value: object, dialect: Dialect) -> str | datetime | None:
        """Refuses a moment that doesn't say its zone."""
        if value is None:
            return None
        if not isinstance(value, datetime) or value.tzinfo is None:
            raise TypeError(f"not a moment with its zone: {value!r}")
        utc = value.astimezone(UTC)
        return utc.isoformat(timespec="microseconds") if is_sqlite(dialect) else utc

    def process_result_value(self, value: object, dialect: Dialect) -> datetime | None:
        """The moment in UTC."""
        if value is None:
            return None
        if isinstance(value, str):
            return datetime.fromisoformat(value)
        return cast("datetime", value).astimezone(UTC)


class Day(TypeDecorator[date]):
    """A day of the calendar, without a zone."""

    impl = Date
    cache_ok = True

    def load_dialect_impl(self, dialect: Dialect) -> TypeEngine[Any]:
        """Text in a file, a date on a server."""
        return dialect.type_descriptor(Text() if is_sqlite(dialect) else Date())

    def process_bind_param(self, value: object, dialect: Dialect) -> str | date | None:
        """`2026-11-25`."""
        if value is None:
            return None
        if type(value) is not date:
            raise TypeError(f"not a day: {value!r}")
        return value.isoformat() if is_sqlite(dialect) else value

    def process_result_value(self, value: object, dialect: Dialect) -> date | None:
        """The day again."""
        return date.fromisoformat(value) if isinstance(value, str) else cast("date | None", value)


class Flag(TypeDecorator[bool]):
    """True or false; 1 or 0 in a file."""

    impl = Boolean
    cache_ok = True

    def load_dialect_impl(self, dialect: Dialect) -> TypeEngine[Any]:
        """A whole number in a file, a flag on a server."""
        return dialect.type_descriptor(Integer() if is_sqlite(dialect) else Boolean())

    def process_bind_param(self, value: object, dialect: Dialect) -> int | bool | None:
        """1 or 0 for a file."""
        if value is None:
            return None
        if type(value) is not bool:
            raise TypeError(f"neither true nor false: {value!r}")
        return int(value) if is_sqlite(dialect) else value

    def process_result_value(self, value: object, dialect: Dialect) -> bool | None:
        """A flag again."""
        return None if value is None else bool(value)
