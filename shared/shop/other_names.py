"""Things looked for by names they don't carry: "prime rib" is on no list that has a rib roast.

What the trade calls a thing besides its own name lies in layers. The first is looked through
along with the own names, a later one only where nothing was found before it: the words of another
language mustn't stand among what was plainly meant.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import NamedTuple

from shared.shop.customers import name_key
from shared.shop.found_names import Forms, found_names, one_meant, stems, written_nearly
from shared.shop.near_names import begins_near

SHORTEST_OTHER = 3
_stems = lru_cache(maxsize=8192)(stems)


@dataclass(frozen=True, slots=True)
class OtherName:
    """A name a thing is also found by: `shown` beside its own, "" where that one says it.

    `searched` are the words it is found by, where they are more than what is shown.
    """

    shown: str
    searched: tuple[str, ...] = ()


Layer = Sequence[Sequence[OtherName]]
"""For each of the things its other names."""


class Found(NamedTuple):
    """One of the things by its place, and the other name it was found by, "" for its own."""

    at: int
    other: str = ""


class _Answer(NamedTuple):
    named: tuple[int, ...]
    whole: list[Found]
    partly: list[Found]


class _Name(NamedTuple):
    found: Found
    words: tuple[str, ...]


class _Searched:
    """One layer, its words apart: each word typed is compared with each word once."""

    def __init__(self, layer: Layer) -> None:
        self._names = tuple(_each(layer))
        self._words = frozenset(word for name in self._names for word in name.words)
        self._joined = tuple(
            ("".join(name.words[at:]), name.found)
            for name in self._names
            for at in range(len(name.words))
        )

    def whole(self, typed: Sequence[str]) -> list[Found]:
        """What has this name, in either number: "brat" is "brats"."""
        return [
            name.found
            for name in self._names
            if len(name.words) == len(typed) and all(map(_same, typed, name.words))
        ]

    def partly(self, typed: Sequence[str]) -> list[Found]:
        """What has a name with a word for each one typed, or that begins so, written as one."""
        each = [{word for word in self._words if _begins(one, word)} for one in typed]
        held = [name.found for name in self._names if _has_all(name, each)]
        joined = "".join(typed)
        return held or [found for text, found in self._joined if text.startswith(joined)]

    def near(self, typed: Sequence[str]) -> list[Found]:
        """What has a name written nearly so."""
        each = [
            {word for word in self._words if one in word or begins_near(one, word)} for one in typed
        ]
        return [name.found for name in self._names if _has_all(name, each)]


class NamesSearched:
    """Several things by their own names (`forms`) and by others, read when first needed."""

    def __init__(
        self, forms: Sequence[Forms], others: Callable[[], Sequence[Layer]] | None = None
    ) -> None:
        self.forms = tuple(forms)
        self._others = others
        self._layers: tuple[_Searched, ...] | None = None
        self._last = "", _Answer((), [], [])

    def prepare(self) -> None:
        """Read the other names ahead of the first key, on a worker: of 290 cuts some 40 ms."""
        self._read()

    def found(self, typed: str) -> tuple[Found, ...]:
        """Those that have what is typed.

        By their whole own name, by another as a whole, by part of their own, by part of another.
        """
        key = name_key(typed)
        named, whole, partly = self._answer(key)
        exact = [Found(at) for at in named if key in self.forms[at]]
        return _once([*exact, *whole, *map(Found, named), *partly])

    def near(self, typed: str) -> tuple[Found, ...]:
        """Those written nearly as typed: "osso bucco" is near "osso buco"."""
        named = [Found(at) for at in written_nearly(typed, self.forms)]
        words = _spaced(name_key(typed))
        others = [found for layer in self._read() for found in layer.near(words)] if words else []
        return _once([*named, *others])

    def meant(self, typed: str) -> int | None:
        """The one that is meant for certain; None where another thing has the name as well.

        A whole own name is never another's: "ham" of a deer is a leg, of a hog a ham.
        """
        key = name_key(typed)
        if any(key in each for each in self.forms):
            return one_meant(typed, self.forms)
        named, whole, partly = self._answer(key)
        certain = whole if whole and not named else [*map(Found, named), *whole, *partly]
        places = {one.at for one in certain}
        return places.pop() if len(places) == 1 else None

    def _answer(self, key: str) -> "_Answer":
        """Kept for what was typed last: a field asks after each key what is found and meant."""
        if self._last[0] != key:
            named = found_names(key, self.forms)
            self._last = key, _Answer(named, *self._by_others(_spaced(key), known=bool(named)))
        return self._last[1]

    def _by_others(self, words: tuple[str, ...], *, known: bool) -> tuple[list[Found], list[Found]]:
        """What has it as a whole other name, and what has its words, of the first layer with any.

        `known` says that own names have it: then only the first layer is looked through.
        """
        if len("".join(words)) < SHORTEST_OTHER:
            return [], []
        layers = self._read()
        for layer in layers[:1] if known else layers:
            whole, partly = layer.whole(words), layer.partly(words)
            if whole or partly:
                return whole, partly
        return [], []

    def _read(self) -> tuple[_Searched, ...]:
        if self._layers is None:
            read = self._others() if self._others is not None else ()
            self._layers = tuple(_Searched(layer) for layer in read)
        return self._layers


def _each(layer: Layer) -> Iterator[_Name]:
    for at, names in enumerate(layer):
        for name in names:
            for form in dict.fromkeys(name.searched or (name.shown,)):
                yield _Name(Found(at, name.shown), _spaced(name_key(form)))


def _spaced(key: str) -> tuple[str, ...]:
    """The words of a text as `name_key` gives it: of "t-bone" "t" and "bone"."""
    return tuple("".join(one if one.isalnum() else " " for one in key).split())


def _same(one: str, other: str) -> bool:
    return one == other or not _stems(one).isdisjoint(_stems(other))


def _begins(typed: str, word: str) -> bool:
    return word.startswith(typed) or not _stems(typed).isdisjoint(_stems(word))


def _has_all(name: _Name, each: Sequence[set[str]]) -> bool:
    return all(not words.isdisjoint(name.words) for words in each)


def _once(found: Sequence[Found]) -> tuple[Found, ...]:
    """Each thing where it came first."""
    first: dict[int, Found] = {}
    for one in found:
        first.setdefault(one.at, one)
    return tuple(first.values())
