"""The shop's customers as a field offers them: read on a worker, found as one types."""

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from shared.shop.customers import name_key

if TYPE_CHECKING:
    from collections.abc import Sequence

    from db.store import Store

MOST = 2000
MOST_HITS = 40


@dataclass(frozen=True, slots=True)
class Hit:
    """One customer offered for what was typed; `near`: only written nearly so."""

    id: int
    words: str
    near: bool = False


@dataclass(frozen=True, slots=True)
class Names:
    """The first customers by name; `keys` is what is looked for in their words, `at` where."""

    ids: tuple[int, ...] = ()
    words: tuple[str, ...] = ()
    keys: tuple[str, ...] = ()
    at: dict[str, int] = field(default_factory=dict[str, int])

    def hits(self, typed: str) -> list[Hit]:
        """Those that hold every word typed, in their order."""
        parts = name_key(typed).split()
        found = [at for at, key in enumerate(self.keys) if all(part in key for part in parts)]
        return [Hit(self.ids[at], self.words[at]) for at in found[:MOST_HITS]]


def read_names(store: "Store", most: int) -> Names:
    """The first so many customers by name; run it on a worker."""
    with store.read() as work:
        rows = work.customers.names(most)
    words = tuple(customer_words(name, phone) for _, name, phone in rows)
    keys = tuple(name_key(one) for one in words)
    ids = tuple(row[0] for row in rows)
    places = {key: len(keys) - 1 - back for back, key in enumerate(reversed(keys))}
    return Names(ids, words, keys, places)


def find_customers(store: "Store", typed: str) -> "Sequence[Hit]":
    """Whoever in the whole store holds what is typed, then those near it; run it on a worker."""
    with store.read() as work:
        found = work.search.customers(typed, MOST_HITS)
    return [Hit(one.id, customer_words(one.title, one.detail), one.near) for one in found]


def customer_words(name: str, phone: str) -> str:
    """A customer on one line: the name, two spaces, the phone."""
    return f"{name}  {phone}".strip()
