"""Reads typed figures out of one table of a species file and says exactly what is wrong there."""

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from functools import lru_cache
from typing import TypeVar, cast

from shared.units import Weight, read_length, read_weight

_Name = TypeVar("_Name", bound=str)
_NONE: dict[str, object] = {}


class BadCatalogue(Exception):  # noqa: N818 (a fact about our file, named as rooms speak of it)
    """A species file of the package is wrong: our bug, so it names the place and both sides.

    `table` is the place ("pork.toml [[part]] ham_centre"), `key` the entry there, `asked` what
    belongs there and `found` what stands there.
    """

    def __init__(self, table: str, key: str, asked: str, found: object) -> None:
        """The fault in words: where, which entry, what was asked, what was found."""
        super().__init__(f"{table}: {key}: asked for {asked}, found {found!r}")
        self.table = table
        self.key = key
        self.asked = asked
        self.found = found


@lru_cache(maxsize=4096)
def fraction_of(text: str) -> Fraction:
    """An exact fraction: "0.0473", "1/2", "4.73 %" or "17.4/210.9". ValueError for other text."""
    body = text.strip()
    if body.endswith("%"):
        return fraction_of(body[:-1]) / 100
    above, slash, below = body.partition("/")
    if not slash:
        return Fraction(above.strip())
    return Fraction(above.strip()) / Fraction(below.strip())


@lru_cache(maxsize=1024)
def _length(text: str) -> int | None:
    """Units of 1/203,200 in, or None where the text is no length: "1/16 in" is 12,700."""
    value = read_length(text)
    return value if isinstance(value, int) else None


@lru_cache(maxsize=1024)
def _weight(text: str) -> Weight | None:
    """The weight as written, or None where the text is no weight."""
    value = read_weight(text)
    return value if isinstance(value, Weight) else None


class Table:
    """One table of the file, read key by key; `close` refuses the keys nobody asked for."""

    __slots__ = ("_entries", "_left", "place")

    def __init__(self, place: str, entries: Mapping[str, object]) -> None:
        """A table at `place`, a name for people such as "pork.toml [[cut]] whole_ham"."""
        self.place = place
        self._entries = entries
        self._left = set(entries)

    def wrong(self, key: str, asked: str) -> BadCatalogue:
        """The exception for one entry of this table."""
        return BadCatalogue(self.place, key, asked, self._entries.get(key, "nothing"))

    def has(self, key: str) -> bool:
        """Whether the entry is there."""
        return key in self._entries

    def text(self, key: str, default: str | None = None) -> str:
        """A text; without a default it must be there."""
        value = self._value(key, default)
        if not isinstance(value, str):
            raise self.wrong(key, "a text")
        return value

    def name(self, key: str, allowed: Sequence[_Name], default: _Name | None = None) -> _Name:
        """One of a closed list of names."""
        value = self._value(key, default)
        for one in allowed:
            if one == value:
                return one
        raise self.wrong(key, "one of " + ", ".join(repr(one) for one in allowed))

    def texts(self, key: str, default: tuple[str, ...] | None = None) -> tuple[str, ...]:
        """A list of texts."""
        value = self._value(key, default)
        if not isinstance(value, list | tuple):
            raise self.wrong(key, "a list of texts")
        items = cast("Sequence[object]", value)
        if not all(isinstance(one, str) for one in items):
            raise self.wrong(key, "a list of texts")
        return tuple(cast("Sequence[str]", items))

    def whole(self, key: str, default: int | None = None) -> int:
        """A whole number."""
        value = self._value(key, default)
        if not isinstance(value, int) or isinstance(value, bool):
            raise self.wrong(key, "a whole number")
        return value

    def flag(self, key: str, default: bool) -> bool:
        """True or false."""
        value = self._value(key, default)
        if not isinstance(value, bool):
            raise self.wrong(key, "true or false")
        return value

    def fraction(self, key: str, default: Fraction | None = None) -> Fraction:
        """A fraction written as text, 0 or more."""
        if default is not None and not self.has(key):
            return default
        text = self.text(key)
        try:
            value = fraction_of(text)
        except (ValueError, ZeroDivisionError):
            raise self.wrong(key, 'a fraction such as "1/2", "0.05" or "5 %"') from None
        if value < 0:
            raise self.wrong(key, "a fraction of 0 or more")
        return value

    def length(self, key: str) -> int:
        """A length with its unit, in 1/203,200 in."""
        value = _length(self.text(key))
        if value is None:
            raise self.wrong(key, 'a length such as "4 3/4 in"')
        return value

    def weight(self, key: str) -> Weight:
        """A weight with its unit, kept as written."""
        value = _weight(self.text(key))
        if value is None:
            raise self.wrong(key, 'a weight such as "92 lb"')
        return value

    def optional_length(self, key: str) -> int | None:
        """A length, or None where the entry is not there."""
        return self.length(key) if self.has(key) else None

    def optional_weight(self, key: str) -> Weight | None:
        """A weight, or None where the entry is not there."""
        return self.weight(key) if self.has(key) else None

    def optional_whole(self, key: str) -> int | None:
        """A whole number, or None where the entry is not there."""
        return self.whole(key) if self.has(key) else None

    def table(self, key: str) -> "Table":
        """The table under a key; an empty one where it is not there."""
        value = self._value(key, _NONE)
        if not isinstance(value, dict):
            raise self.wrong(key, "a table")
        return Table(f"{self.place} {key}", cast("Mapping[str, object]", value))

    def tables(self, key: str, called: str = "code") -> Iterator["Table"]:
        """The tables of a list, each named by its `called` entry."""
        value = self._value(key, ())
        if not isinstance(value, list | tuple):
            raise self.wrong(key, "a list of tables")
        for place, one in enumerate(cast("Sequence[object]", value), start=1):
            if not isinstance(one, dict):
                raise self.wrong(key, "a list of tables")
            entries = cast("Mapping[str, object]", one)
            yield Table(f"{self.place} [[{key}]] {entries.get(called, place)}", entries)

    def names(self, key: str, allowed: Sequence[_Name]) -> tuple[_Name, ...]:
        """A list of names out of a closed list; empty where the entry is not there."""
        wanted = self.texts(key, ())
        if not all(one in allowed for one in wanted):
            raise self.wrong(key, "names out of " + ", ".join(repr(one) for one in allowed))
        return tuple(one for want in wanted for one in allowed if one == want)

    def optional_fraction(self, key: str) -> Fraction | None:
        """A fraction, or None where the entry is not there."""
        return self.fraction(key) if self.has(key) else None

    def range_of(self, key: str) -> tuple[Fraction, Fraction]:
        """Two fractions, the lower first."""
        texts = self.texts(key)
        try:
            low, high = (fraction_of(one) for one in texts)
        except (ValueError, ZeroDivisionError):
            raise self.wrong(key, 'a range such as ["70 %", "75 %"]') from None
        if low > high:
            raise self.wrong(key, "a range with the lower figure first")
        return low, high

    def days(self, key: str) -> tuple[int, int]:
        """Two whole numbers of days, the fewer first."""
        value = self._value(key, None)
        if isinstance(value, list):
            match cast("list[object]", value):
                case [int() as few, int() as many] if few <= many:
                    return few, many
                case _:
                    pass
        raise self.wrong(key, "two numbers of days, the fewer first")

    def each_text(self) -> dict[str, str]:
        """Every entry of this table, all of them texts."""
        return {key: self.text(key) for key in self._entries}

    def each_range(self) -> dict[str, tuple[Fraction, Fraction]]:
        """Every entry of this table, all of them ranges."""
        return {key: self.range_of(key) for key in self._entries}

    def close(self) -> None:
        """Refuse what is left: an entry nobody reads is a slip of the pen."""
        for key in sorted(self._left):
            raise self.wrong(key, "no such entry here")

    def _value(self, key: str, default: object) -> object:
        self._left.discard(key)
        if key in self._entries:
            return self._entries[key]
        if default is None:
            raise self.wrong(key, "an entry")
        return default
