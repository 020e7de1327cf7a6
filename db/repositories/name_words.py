"""The words of all customers' names, kept in memory: two edits leave no piece an index could find.

Read once for each store, then followed by what was changed since, by whatever station.
"""

from collections import defaultdict
from collections.abc import Iterable
from threading import Lock
from weakref import WeakKeyDictionary

from rapidfuzz import process
from rapidfuzz.distance import OSA
from sqlalchemy import Connection, Engine, Row, bindparam, func, select

from db.tables.customers import Customers
from db.tables.papers import Changes

MOST_FOLLOWED = 2000
_SHOWN = func.coalesce(Customers.joined_into, Customers.id)
_ALL = select(Customers.id, _SHOWN, Customers.name_key)
_THESE = _ALL.where(Customers.id.in_(bindparam("ids", expanding=True)))
_NEWEST = select(func.coalesce(func.max(Changes.id), 0))
_SINCE = (
    select(Changes.subject_id)
    .where(Changes.id > bindparam("seen"), Changes.subject == "customer")
    .limit(MOST_FOLLOWED)
)


class NameWords:
    """Which customers have which word; words that were renamed stay, whoever asks compares."""

    def __init__(self) -> None:
        self._seen = -1
        self._names: dict[int, tuple[int, str]] = {}
        self._having: defaultdict[str, dict[int, None]] = defaultdict(dict)
        self._beginning: dict[int, dict[str, list[str]]] = {}
        self._lock = Lock()

    def follow(self, connection: Connection) -> None:
        """Read all names the first time, later those that were changed."""
        with self._lock:
            newest = int(connection.execute(_NEWEST).scalar_one())
            if newest == self._seen:
                return
            if self._seen < 0:
                self._take(connection.execute(_ALL))
            else:
                changed = [row[0] for row in connection.execute(_SINCE, {"seen": self._seen})]
                if len(changed) == MOST_FOLLOWED:
                    self._take(connection.execute(_ALL))
                elif changed:
                    self._take(connection.execute(_THESE, {"ids": changed}))
            self._seen = newest

    def near(self, word: str, most: int, limit: int) -> dict[int, tuple[int, str]]:
        """Customers with a word, or a word's beginning, so many edits away; nearest words first.

        Each with the id he is shown by and his name as it is searched.
        """
        with self._lock:
            whole = process.extract(
                word, self._having.keys(), scorer=OSA.distance, score_cutoff=most, limit=None
            )
            begun = self._begun(len(word))
            first = process.extract(
                word, begun.keys(), scorer=OSA.distance, score_cutoff=most, limit=None
            )
            words = [(off, [found]) for found, off, _ in whole]
            words += [(off, begun[found]) for found, off, _ in first]
            found: dict[int, tuple[int, str]] = {}
            for _, ones in sorted(words, key=lambda one: one[0]):
                for one in ones:
                    for customer in self._having[one]:
                        found[customer] = self._names[customer]
                        if len(found) == limit:
                            return found
            return found

    def _begun(self, size: int) -> dict[str, list[str]]:
        """Longer words by their first so many letters."""
        if size not in self._beginning:
            begun: defaultdict[str, list[str]] = defaultdict(list)
            for word in self._having:
                if len(word) > size:
                    begun[word[:size]].append(word)
            self._beginning[size] = dict(begun)
        return self._beginning[size]

    def _take(self, rows: Iterable[Row[int, int, str]]) -> None:
        for customer, shown, name in rows:
            self._names[customer] = (shown, name)
            for word in name.split():
                self._having[word][customer] = None
        self._beginning.clear()


_OF_STORE: WeakKeyDictionary[Engine, NameWords] = WeakKeyDictionary()
_ONE = Lock()


def name_words(connection: Connection) -> NameWords:
    """The words of this store's names, as they are now."""
    with _ONE:
        words = _OF_STORE.setdefault(connection.engine, NameWords())
    words.follow(connection)
    return words
